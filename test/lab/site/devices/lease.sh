#!/bin/sh
# What a DHCP client does with an answer. /etc/resolv.conf is a mount: written in place.
case "$1" in
bound | renew)
  ip -4 addr flush dev "$interface"
  ip addr add "$ip/${mask:-24}" brd + dev "$interface"
  for gateway in $router; do ip route replace default via "$gateway" dev "$interface"; break; done
  { for server in $dns; do echo "nameserver $server"; done; echo "options timeout:1 attempts:1"; } >/etc/resolv.conf
  echo "address $ip mask ${subnet:-} gateway ${router:-none} dns ${dns:-none} from ${serverid:-} for ${lease:-} s"
  ;;
nak | leasefail) echo "no lease: $1 ${message:-}" ;;
esac
exit 0
