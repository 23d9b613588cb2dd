/**
 * What a job costs and what is asked for it. Money is decimal, never binary: every amount that is written has the decimals of
 * its currency, rounded half up, and all written sums hold exactly.
 */
package org.frisket.orders.paper.quote;
