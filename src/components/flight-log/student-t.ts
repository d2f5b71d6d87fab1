import jStat from 'jstat';
import type {StudentT} from '../../calc/flight-log/comparison.js';

/** Student's t distribution from the statistics library. */
export const studentT: StudentT = {quantile: (probability, freedom) => jStat.studentt.inv(probability, freedom)};
