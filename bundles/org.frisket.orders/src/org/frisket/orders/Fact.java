package org.frisket.orders;

/**
 * Something of the studio that a job was made with, as it was then.
 *
 * @param item  its id; empty for the customer, of whom a job has one
 * @param field what is said of it, as files have it, such as {@code grammage}
 * @param text  what that was; empty for nothing known
 */
public record Fact(Subject subject, String item, String field, String text) {

	/** The customer's name when the job was made; blank since if who it was had to be forgotten. */
	public static final String NAME = "name";
	/** What was agreed with the customer. */
	public static final String AGREEMENT = "agreement";

	/** What a fact is about. */
	public enum Subject {
		CUSTOMER, STOCK, MACHINE, TOOL
	}
}
