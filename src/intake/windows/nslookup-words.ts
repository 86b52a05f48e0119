import type { Lookup } from '../seen.js';
import type { Phrase } from './word-between.js';

const words = (row: string): ReadonlySet<string> => new Set(row.split(', '));

/**
 * What stands before the name of the server that answers: English, German, French, Spanish, Portuguese, Italian, Dutch,
 * Polish, Turkish, Russian, Chinese, Japanese; small letters.
 */
export const SERVER_LABELS = words('server, serveur, servidor, serwer, sunucu, сервер, 服务器, サーバー');

/** The same where nothing was asked yet. */
export const DEFAULT_SERVER_LABELS = words(
  'default server, standardserver, serveur par défaut, servidor predeterminado, servidor padrão, servidor predefinido, server predefinito, standaardserver, serwer domyślny, domyślny serwer, varsayılan sunucu, сервер по умолчанию, 默认服务器, 既定のサーバー',
);

/** Windows leaves this label in English in every language looked at; texts typed off a screen do not. */
export const ADDRESS_LABELS = words(
  'address, addresses, adresse, adressen, adresses, dirección, direcciones, endereço, endereços, indirizzo, indirizzi, adres, adressen, adresy, adresler, адрес, адреса, 地址, アドレス',
);

export const NAME_LABELS = words('name, nom, nombre, nome, naam, nazwa, ad, имя, 名称, 名前');

export const ALIAS_LABELS = words('alias, aliases, aliase');

/** The line above an answer that comes from a memory. */
export const NOT_AUTHORITATIVE: readonly string[] = [
  'non-authoritative answer',
  'nicht autorisierende antwort',
  'nicht-autorisierende antwort',
  'réponse ne faisant pas autorité',
  'respuesta no autoritativa',
  'não é resposta autoritativa',
  'resposta não autoritativa',
  'risposta da un server non autorevole',
  'niet-bindend antwoord',
  'nieautorytatywna odpowiedź',
  'yetkili olmayan yanıt',
  'не заслуживающий доверия ответ',
  '非权威应答',
  '権限のない回答',
];

/** That nobody answered within the time. */
export const SILENT: readonly string[] = [
  'timed out',
  'timed-out',
  'no response',
  'zeitüberschreitung',
  'délai de la requête',
  "délai d'attente",
  'tiempo de espera',
  'tempo limite',
  'scadut',
  'time-out',
  'limit czasu',
  'zaman aşımı',
  'время ожидания',
  'превышен',
  'истекло',
  '超时',
  'タイムアウト',
];

/** What stands around the name that was not found. */
export const NOT_FOUND: readonly Phrase[] = [
  ["can't find server name for address ", ''],
  ["can't find address for server ", ''],
  ["can't find ", ''],
  [' kann ', ' nicht finden'],
  ['ne parvient pas à trouver ', ''],
  ['no encuentra ', ''],
  ['não encontrou ', ''],
  ['non riesce a trovare ', ''],
  ['impossibile trovare ', ''],
  [' kan ', ' niet vinden'],
  ['nie może odnaleźć ', ''],
  ['не удалось найти ', ''],
  ['не удается найти ', ''],
  ['找不到 ', ''],
  [' が ', ' を見つけられません'],
];

/** A name that is there, and has no address. */
export const NO_ADDRESS: readonly Phrase[] = [['records available for ', '']];

/** Why a name was not found. The words stay English in every language looked at. */
export const REASONS: readonly (readonly [Lookup['outcome'], readonly string[]])[] = [
  ['no-such-name', ['non-existent domain', 'nazwa nie istnieje']],
  ['refused', ['query refused']],
  ['no-answer', SILENT],
  ['failed', ['server failed']],
];
