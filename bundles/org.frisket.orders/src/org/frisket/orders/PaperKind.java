package org.frisket.orders;

/** What is handed out of a job, on paper or as a file. */
public enum PaperKind {
	/** What a customer approves. */
	PROOF,
	/** The ticket that goes with the work. */
	DOCKET,
	/** What is asked for the job. */
	QUOTE
}
