import { parentPort, workerData } from 'node:worker_threads';
import { type CallsWanted, heldCalls } from './held-calls.js';
import { rules } from './rule-base.js';

/** Holds its share of the calls and sends them back. Started by in-workers.ts, bundled. */
const wanted = workerData as readonly CallsWanted[];
parentPort?.postMessage(wanted.map((one) => heldCalls(rules, one)));
