"""Listens at ports 80 and 554 of an address and at no others, and prints whatever comes in from outside on an adapter."""
import json, socket, struct, sys, threading

adapter, address = sys.argv[1], sys.argv[2]
for port in (80, 554):
    door = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    door.bind((address, port))
    door.listen(5)
    threading.Thread(target=lambda door=door: [door.accept() for _ in iter(int, 1)], daemon=True).start()
ear = socket.socket(socket.AF_PACKET, socket.SOCK_RAW, socket.htons(3))
ear.bind((adapter, 0))
print('ready', flush=True)
while True:
    frame, (_, _, direction, *_rest) = ear.recvfrom(65536)
    if direction == 4:  # PACKET_OUTGOING
        continue
    kind = struct.unpack('!H', frame[12:14])[0]
    dotted = lambda at: '.'.join(str(byte) for byte in frame[at:at + 4])
    if kind == 0x0806:
        print(f'arp {dotted(38)}', flush=True)
    elif kind == 0x0800:
        protocol = {1: 'icmp', 6: 'tcp', 17: 'udp'}.get(frame[23], str(frame[23]))
        port = struct.unpack('!H', frame[36:38])[0] if protocol in ('tcp', 'udp') else 0
        print(f'{protocol} {dotted(30)}' + (f':{port}' if port else ''), flush=True)
