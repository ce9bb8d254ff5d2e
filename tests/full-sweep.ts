/** `CRESTWISE_SWEEP=full npm test` measures every case of a sweep; otherwise a part that spans its strata. */
export const fullSweep = process.env.CRESTWISE_SWEEP === 'full';
