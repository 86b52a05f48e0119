import type { Phrase } from './word-between.js';

/**
 * How the first line names its target: English, German, French, Spanish, Portuguese, Italian, Dutch, Polish, Turkish,
 * Russian, Chinese, Japanese; small letters.
 */
export const HEADS: readonly string[] = [
  'tracing route to',
  'routenverfolgung zu',
  "détermination de l'itinéraire vers",
  'traza a ',
  'rastreando a rota para',
  'a rastrear a rota para',
  'rastreamento da rota para',
  'traccia instradamento verso',
  'traceren van de route naar',
  'śledzenie trasy do',
  'giden yol izleniyor',
  'трассировка маршрута к',
  '个跃点跟踪',
  'へのルートをトレースしています',
];

/** The last line, in the same languages. */
export const DONE: readonly string[] = [
  'trace complete',
  'ablaufverfolgung beendet',
  'itinéraire déterminé',
  'traza completa',
  'rastreamento concluído',
  'rastreio concluído',
  'traccia completata',
  'de trace is voltooid',
  'śledzenie zakończone',
  'izleme tamamlandı',
  'трассировка завершена',
  '跟踪完成',
  'トレースを完了しました',
];

/** What is said of a name that has no address. */
export const NOT_RESOLVED: readonly Phrase[] = [
  ['unable to resolve target system name ', ''],
  ['der zielname ', ' konnte nicht aufgelöst'],
  ['den zielsystemnamen ', ' nicht auflösen'],
  ['impossible de résoudre le nom du système cible ', ''],
  ['no se puede resolver el nombre del sistema de destino ', ''],
  ['não é possível resolver o nome do sistema de destino ', ''],
  ['impossibile risolvere il nome del sistema di destinazione ', ''],
  ['kan de naam van het doelsysteem ', ' niet'],
  ['nie można rozpoznać nazwy systemu docelowego ', ''],
  ['hedef sistem adı ', ' çözülemiyor'],
  ['не удается разрешить системное имя узла ', ''],
  ['无法解析目标系统名称 ', ''],
  ['ターゲット システム名 ', ' を解決できません'],
];
