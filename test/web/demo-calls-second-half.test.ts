import { DEMO_CALLS, holdDemoCalls } from './hold-demo-calls.js';

holdDemoCalls(DEMO_CALLS.filter((_, at) => at % 2 === 1));
