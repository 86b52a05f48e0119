/** `name@host:~$ ping 172.23.40.57`, `[name@host ~]# `, `host:~ name$`, `name@host ~ %`, `/ # `, `$ ip addr`. */
const PROMPTS: readonly RegExp[] = [
  /^\[?[\w.-]{1,40}@[\w.-]{1,80}[: ][^\s$#%]{0,200}\]? ?[$#%](?: |$)/,
  /^[\w.-]{1,80}:\S{1,200} [\w.-]{1,40}\$(?: |$)/,
  // The names in it were taken out before.
  /^\[?\[dropped\](?:@\[dropped\])?[: ][^\s$#%]{0,200}\]? ?[$#%](?: |$)/,
  /^(?:bash|sh|zsh|ksh)-\d[\d.]{0,8}[$#](?: |$)/,
  /^(?:~|\/\S{0,100}) [#$](?: |$)/,
  /^[$#%] ?(?:sudo |su |\/?(?:usr\/)?s?bin\/)?(?:ip|ipconfig|netsh|tracert|ifconfig|ping6?|arp|arping|route|netstat|traceroute|tracepath|mtr|nmcli|resolvectl|cat|scutil|dig|host|nslookup|ethtool|curl|nc|ncat|systemd-resolve)\b/,
];

/** Whether a line is the prompt of a shell, with or without a command behind it. */
export function isPrompt(text: string): boolean {
  return /[#$%]/.test(text) && PROMPTS.some((prompt) => prompt.test(text));
}
