/** Words that stand after *password* or *key* in plain speech and are none: they end what is hidden. */
export const ORDINARY: ReadonlySet<string> = new Set(
  `a about accepted after again all also always am an and any app are as asks at back bad be because been before being
blank both but by camera can can't cannot changed check choose could default did didn't differs do does doesn't don't
each either else empty enter error ever every fails field fine for forgot forgotten form found from gave gets given
gone good had has have he help her here hers his how i if in incorrect instead into invalid is isn't it its keeps
known last later left letter letters like lost made may me mine missing my need needs neither never new no nobody none
nor not nothing now of off ok okay old on one only open or other our out over own page phone please prompt read refused
rejected required reset right s same saved says screen see sent set shall she should since so some still such tell than
that the their them then there they this three to too tried tries try twice two unchanged under unknown until up us use
valid very was wasn't we were what when where which while who why will with without works would written wrong yes yet
you your`.split(/\s+/),
);
