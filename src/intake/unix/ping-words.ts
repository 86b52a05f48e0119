import type { PingTrouble } from '../seen.js';

/**
 * What ping, the resolver and the system say, as ping of iputils, busybox and the BSDs print it, with the translations
 * of iputils and the GNU C library. In small letters. The first table that fits wins.
 */
export const TROUBLES: readonly (readonly [PingTrouble['kind'], readonly string[]])[] = [
  [
    'no-such-name',
    [
      'name or service not known',
      'unknown host',
      'bad address',
      'nodename nor servname provided',
      'no address associated with',
      'name does not resolve',
      'der name oder der dienst ist nicht bekannt',
      'name oder dienst nicht bekannt',
      'unbekannter rechner',
      'zu diesem hostnamen gehört keine adresse',
      'nom ou service inconnu',
      'hôte inconnu',
      "aucune adresse associée avec le nom de l'hôte",
      'nombre o servicio desconocido',
      "`host' desconocido",
      'no existe ninguna dirección asociada al nombre',
      'nome o servizio sconosciuto',
      'nome ou serviço desconhecido',
      'nazwa lub usługa jest nieznana',
      'naam of dienst is niet bekend',
      'isim ya da servis bilinmiyor',
      'неизвестное имя или служба',
      '未知的名称或服务',
      '名前またはサービスが不明です',
    ],
  ],
  [
    'net-unreachable',
    [
      'net unreachable',
      'network is unreachable',
      'network unreachable',
      'network is down',
      'net unknown',
      'net prohibited',
      'zielnetz nicht erreichbar',
      'das netzwerk ist nicht erreichbar',
      'das netzwerk ist nicht aktiv',
      'réseau de destination injoignable',
      "le réseau n'est pas accessible",
      'la red es inaccesible',
      'la rete non è raggiungibile',
      'a rede está fora de alcance',
      'sieć jest niedostępna',
      'netwerk is onbereikbaar',
      'ağ erişilebilir durumda değil',
      'сеть недоступна',
      '网络不可达',
      'ネットワークに届きません',
    ],
  ],
  [
    'host-unreachable',
    [
      'host unreachable',
      'no route to host',
      'host is unreachable',
      'host is down',
      'host unknown',
      'address unreachable',
      'zielhost nicht erreichbar',
      'adresse nicht erreichbar',
      'keine route zum zielrechner',
      'der rechner ist nicht aktiv',
      'hôte de destination injoignable',
      "aucun chemin d'accès pour atteindre l'hôte cible",
      'no existe ninguna ruta hasta el',
      "nessun instradamento per l'host",
      'não há rota para o host',
      'brak trasy do hosta',
      'geen route naar host',
      'makinaya ağ üzerinden yol yok',
      'нет маршрута до узла',
      '没有到主机的路由',
      'ホストへの経路がありません',
    ],
  ],
  [
    'ttl-expired',
    [
      'time to live exceeded',
      'time exceeded: hop limit',
      'lebenszeit überschritten',
      'zeit überschritten: hop-limit',
      'durée de vie dépassée',
    ],
  ],
  [
    'failed',
    [
      'temporary failure in name resolution',
      'operation not permitted',
      'permission denied',
      'message too long',
      'packet filtered',
      'temporärer fehler bei der namensauflösung',
      'die operation ist nicht erlaubt',
      'paket gefiltert',
      'échec temporaire dans la résolution du nom',
      'opération non permise',
      'paquet filtré',
      'fallo temporal en la resolución del nombre',
      'operación no permitida',
      'errore temporaneo nella risoluzione del nome',
      'falha temporário na resolução de nome',
      'odwzorowanie nazwy jest chwilowo niemożliwe',
      'tijdelijk probleem in naamsherleiding',
      'isim çözünürlüğünde geçici başarısızlık',
      'временный сбой в разрешении имен',
      '域名解析暂时失败',
      '名前解決に一時的に失敗しました',
    ],
  ],
  ['timed-out', ['request timeout', 'no answer yet', 'noch keine antwort', 'encore aucune réponse']],
];

/** A redirect tells of a better way; the ping goes on. */
export const REDIRECTS: readonly string[] = ['redirect', 'umleiten', 'rediriger', 'redirigir'];

/** How a reply that came twice is marked, and counted at the end. */
export const TWICE: readonly string[] = ['(dup!)', '(dupliqué !)', '(dupliqué!)'];
export const DUPLICATES: readonly string[] = ['duplicate', 'duplikat', 'dupliqu', 'duplicad', 'duplicat'];

/** What stands between the name and the reason when a BSD gives up on a name. */
export const UNKNOWN_NAME =
  /(?:cannot resolve|unknown host|bad address|hôte inconnu|unbekannter rechner) ?:? ['"`]?([^\s:'"`]{1,255})/i;

/** The kind of trouble that a text tells of; none where no table has its words. */
export function troubleKind(text: string): PingTrouble['kind'] | undefined {
  const small = text.toLowerCase().replace(/’/g, "'").replaceAll('i\u0307', 'i');
  return TROUBLES.find(([, words]) => words.some((word) => small.includes(word)))?.[0];
}
