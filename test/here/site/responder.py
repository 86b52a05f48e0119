"""A camera for the tests, written apart from the program: joins the group, prints each probe with the time to live
it came with, and sends the answers it was started with, its own id put in. Each answer begins from an address."""
import json, re, socket, struct, sys

GROUP, PORT, IP_RECVTTL = '239.255.255.250', 3702, 12
address, answers = sys.argv[1], json.loads(sys.argv[2])

listener = socket.socket(socket.AF_INET, socket.SOCK_DGRAM)
listener.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
listener.setsockopt(socket.IPPROTO_IP, IP_RECVTTL, 1)
listener.bind((GROUP, PORT))
listener.setsockopt(socket.IPPROTO_IP, socket.IP_ADD_MEMBERSHIP, socket.inet_aton(GROUP) + socket.inet_aton(address))
print('ready', flush=True)
while True:
    data, ancillary, _, sender = listener.recvmsg(65536, 256)
    ttl = [struct.unpack('i', value)[0] for level, kind, value in ancillary if kind == socket.IP_TTL]
    asked = re.search(r'MessageID>\s*([^<\s]+)', data.decode('utf-8')).group(1)
    print(json.dumps({'ttl': ttl, 'sender': sender[0], 'asked': asked}), flush=True)
    for source, text in answers:
        voice = socket.socket(socket.AF_INET, socket.SOCK_DGRAM)
        voice.bind((source, 0))
        voice.sendto(text.replace('ASKED', asked).encode('utf-8'), sender)
        voice.close()
