import type { PingTrouble } from '../seen.js';
import { remembered } from '../unix/remembered.js';

/**
 * What ping of Windows says, in small letters: English, German, French, Spanish, Portuguese, Italian, Dutch, Polish,
 * Turkish, Russian, Chinese, Japanese. The first row that fits wins.
 */
const TROUBLES: readonly (readonly [PingTrouble['kind'], readonly string[]])[] = [
  [
    'host-unreachable',
    [
      'destination host unreachable',
      'zielhost nicht erreichbar',
      "impossible de joindre l'hôte de destination",
      'host de destino inaccesible',
      'host de destino inacess',
      'host di destinazione non raggiungibile',
      'doelhost onbereikbaar',
      'doelhost is niet bereikbaar',
      'host docelowy jest nieosiągalny',
      'hedef ana bilgisayara ulaşılamıyor',
      'заданный узел недоступен',
      '无法访问目标主机',
      '宛先ホストに到達できません',
    ],
  ],
  [
    'net-unreachable',
    [
      'destination net unreachable',
      'destination network unreachable',
      'zielnetz nicht erreichbar',
      'impossible de joindre le réseau de destination',
      'red de destino inaccesible',
      'rede de destino inacess',
      'rete di destinazione non raggiungibile',
      'doelnetwerk onbereikbaar',
      'doelnet onbereikbaar',
      'sieć docelowa jest nieosiągalna',
      'hedef ağa ulaşılamıyor',
      'заданная сеть недоступна',
      '无法访问目标网',
      '目标网无法访问',
      '宛先ネットワークに到達できません',
      '宛先ネットに到達できません',
    ],
  ],
  // In most languages the letters stay; only a reply that says no TTL at all is none.
  ['ttl-expired', ['ttl', 'die gültigkeitsdauer wurde bei der', 'истек срок жизни']],
  [
    'timed-out',
    [
      'request timed out',
      'zeitüberschreitung der anforderung',
      "délai d'attente de la demande dépassé",
      'tiempo de espera agotado',
      'esgotado o tempo limite do pedido',
      'richiesta scaduta',
      'time-out bij opdracht',
      'upłynął limit czasu żądania',
      'istek zaman aşımına uğradı',
      'превышен интервал ожидания для запроса',
      '请求超时',
      '要求がタイムアウトしました',
    ],
  ],
  [
    'failed',
    [
      'general failure',
      'allgemeiner fehler',
      'défaillance générale',
      'error general',
      'falha geral',
      'errore generale',
      'algemene fout',
      'ogólny błąd',
      'błąd ogólny',
      'genel hata',
      'общий сбой',
      '一般故障',
      '常见故障',
      '一般エラー',
      '一般的なエラー',
      'hardware error',
    ],
  ],
];

/** What stands before a name that was not found, and what must stand behind it where the verb comes last. */
const NOT_FOUND: readonly (readonly [before: string, behind: string])[] = [
  ['ping request could not find host ', ''],
  ['ping-anforderung konnte host ', ' nicht finden'],
  ["la requête ping n'a pas pu trouver l'hôte ", ''],
  ['ping no pudo encontrar el host ', ''],
  ['ping não pôde encontrar o host ', ''],
  ['ping não conseguiu encontrar o host ', ''],
  ["impossibile trovare l'host ", ''],
  ['ping-aanvraag kan host ', ' niet vinden'],
  ['ping nie może znaleźć hosta ', ''],
  ['ping isteği ', ' ana bilgisayarını bulamadı'],
  ['ping isteği ', ' anabilgisayarını bulamadı'],
  ['при проверке связи не удалось обнаружить узел ', ''],
  ['ping 请求找不到主机 ', ''],
  ['ping 要求ではホスト ', ' が見つかりませんでした'],
];
const NAME = /^["']?([^\s"'。]{1,255})/;

/** How the lines of a stopped ping end. */
const STOPPED: ReadonlySet<string> = new Set(
  '^c, control-c, ctrl-c, ctrl+c, strg-c, strg+c, control-break'.split(', '),
);

/** The kind of trouble that a line tells of; none where no row has its words. */
export const windowsTrouble = remembered((text): PingTrouble['kind'] | undefined => {
  const small = plain(text);
  return TROUBLES.find(([, words]) => words.some((word) => small.includes(word)))?.[0];
});

/** One of these stands in each of the phrases. */
const MAY_BE_NOT_FOUND = /ping|trovare|узел/i;

/** The name that ping could not find; none where the line says no such thing. */
export function nameNotFound(text: string): string | undefined {
  if (!MAY_BE_NOT_FOUND.test(text)) return undefined;
  const small = plain(text);
  for (const [before, behind] of NOT_FOUND) {
    const at = small.indexOf(before);
    if (at < 0) continue;
    const name = NAME.exec(text.slice(at + before.length))?.[1];
    if (name !== undefined && small.includes(behind, at)) return name.replace(/\.$/, '');
  }
  return undefined;
}

/** Whether a line says that somebody stopped the ping. */
export function isStopped(text: string): boolean {
  return text.length < 20 && STOPPED.has(text.trim().toLowerCase());
}

/** Of the same length as the text, so that places in one are places in the other. */
function plain(text: string): string {
  return text.replaceAll('İ', 'i').toLowerCase().replaceAll('’', "'");
}
