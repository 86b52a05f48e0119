/** How the device got its address, and the yes and no behind it. */
export type State = 'dhcp' | 'automatic' | 'by-hand' | 'on' | 'off';

/** Languages as in the words of the fields. */
export const STATE_WORDS: Readonly<Record<State, readonly string[]>> = {
  dhcp: ['dhcp'],
  automatic: [
    'automatic, auto, automatically, dynamic, automatisch, dynamisch, automatique, automatiquement, dynamique',
    'automático, automática, dinámico, dinámica, automatico, dinamico, dinâmico, automaticamente',
    'automatycznie, automatyczny, automatyczne, dynamiczny, otomatik, dinamik',
    'автоматически, авто, автоматический, динамический, 自动, 自动获取, 动态, 自動, 動的, 自動取得',
  ],
  'by-hand': [
    'static, manual, manually, fixed, by hand, statisch, manuell, fest, von hand, statique, manuel, manuelle, fixe',
    'estático, estática, manualmente, fijo, fija, fixo, fixa, statico, statica, manuale, fisso, handmatig, vast',
    'statyczny, statyczne, ręcznie, ręczny, ręczne, stały, statik, elle, sabit',
    'статический, статика, статичный, вручную, ручной, 手动, 静态, 固定, 手動, 静的',
  ],
  on: [
    'on, yes, enabled, active, an, ein, ja, aktiviert, eingeschaltet, activé, oui, sí, activado, habilitado',
    'sim, ativado, ligado, attivo, attivato, abilitato, aan, ingeschakeld, tak, włączone, włączony, włączona',
    'açık, evet, etkin, вкл, включен, включено, да, 开, 开启, 启用, 已启用, 是, 已开启, オン, 有効, はい',
  ],
  off: [
    'off, no, not, disabled, inactive, without, aus, nein, kein, keine, ohne, deaktiviert, ausgeschaltet',
    'désactivé, non, sans, apagado, desactivado, deshabilitado, sin, não, desativado, desligado, sem',
    'disattivato, disabilitato, senza, uit, nee, geen, uitgeschakeld, wyłączone, wyłączony, nie, bez',
    'kapalı, hayır, devre dışı, выкл, выключен, отключен, нет, без, 关, 关闭, 禁用, 已关闭, 否, オフ, 無効, いいえ',
  ],
};

/** Words that may stand between a word and its value, or around either, and change nothing. */
export const FILLERS: readonly string[] = [
  'is, are, was, the, a, an, of, my, its, it, has, have, had, gets, and, to, with, at, on, for, set, this, s, i, uses',
  'server, servers, default, primary, secondary, preferred, alternate, local, current, network, details, number',
  'configure, config, configuration, settings, setting, mode, assignment, type, info, information, protocol, tcp',
  'ist, die, der, das, und, hat, mit, meine, mein, lautet, von, des, den, konfigurieren, einstellungen, zuweisung',
  'est, la, le, les, et, de, du, avec, mon, ma, l, d, configurer, configuration, paramètres, attribution',
  'es, el, los, y, con, mi, tiene, del, configurar, configuración, ajustes, asignación',
  'e, é, o, os, com, do, da, meu, minha, configurações, atribuição, il, di, con, ha, mio, configura, impostazioni',
  'de, het, en, met, heeft, mijn, van, configureer, instellingen, to, jest, i, ma, oraz, z, konfiguracja, ustawienia',
  've, ise, ile, yapılandır, ayarları, и, у, это, с, настройка, настройки, мой, 是, 为, 的, 设置, 配置, 分配, は, の, です, 設定, を',
  'standard, par défaut, predeterminada, predeterminado, padrão, domyślna, varsayılan, tcp ip, ip settings, ip setting',
  'ip einstellungen, ip configuration, ip config, ip assignment, ip zuweisung, ip konfiguration, ip設定, ip设置, ip 设置',
  'configure ip, configure ipv4, ip konfigurieren, configurer ip, configurar ip, configura ip, ip configureren',
];

/** Lines with these tell of a try to reach an address, not of whose it is. */
export const TRIES: readonly string[] = [
  'ping, pinged, pinging, pings, pinge, pingue, reply, replies, antwort, traceroute, tracert, tracing, arp, telnet',
  'ssh, curl, nslookup, http, https, rtsp, onvif url, url, hop, hops, ttl, icmp, nmap, connect, connected, refused, timeout',
  'пинг, antwortet nicht, réponse, respuesta, resposta, risposta, odpowiedź, yanıt, ответ',
];
