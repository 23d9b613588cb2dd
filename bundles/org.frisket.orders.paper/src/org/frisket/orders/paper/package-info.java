/**
 * The papers of a job: the docket that goes with it through the workshop, and the proof for its customer; quotes are in
 * {@link org.frisket.orders.paper.quote}. What a paper says depends on the job and on what is handed in, never on the clock.
 */
package org.frisket.orders.paper;
