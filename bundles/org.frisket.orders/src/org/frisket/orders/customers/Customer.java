package org.frisket.orders.customers;

import java.time.Instant;

import org.eclipse.osgi.util.NLS;

/**
 * Somebody a studio works for. What is not known is empty.
 *
 * @param id        never shown; empty of one that is not kept yet
 * @param revision  one more with every change
 * @param contact   whom to ask for
 * @param agreement on prices, in words
 * @param changed   when anything of it was changed last
 */
public record Customer(String id, long revision, String name, String contact, String mail, String phone, String address,
		String agreement, String notes, Instant changed) {

	/** @throws IllegalArgumentException without a name, or with more than fits; the message is for people */
	public Customer {
		name = name.strip();
		if (name.isEmpty()) {
			throw new IllegalArgumentException(Messages.Customer_noName);
		}
		fits(CustomerField.NAME, name);
		fits(CustomerField.CONTACT, contact);
		fits(CustomerField.MAIL, mail);
		fits(CustomerField.PHONE, phone);
		fits(CustomerField.ADDRESS, address);
		fits(CustomerField.AGREEMENT, agreement);
		fits(CustomerField.NOTES, notes);
	}

	private static void fits(CustomerField field, String text) {
		if (text.length() > field.longest()) {
			throw new IllegalArgumentException(
					NLS.bind(Messages.Customer_tooLong, new Object[] { field.word(), field.longest(), text.length() }));
		}
	}

	/** One that is not kept yet, of whom no more is known. */
	public static Customer named(String name) {
		return new Customer("", 0, name, "", "", "", "", "", "", Instant.EPOCH);
	}

	/** Whether it had to be forgotten who this was. */
	public boolean isErased() {
		return Eraser.isBlank(this);
	}

	public String get(CustomerField field) {
		return switch (field) {
		case NAME -> name;
		case CONTACT -> contact;
		case MAIL -> mail;
		case PHONE -> phone;
		case ADDRESS -> address;
		case AGREEMENT -> agreement;
		case NOTES -> notes;
		};
	}

	/** The same with another text. @throws IllegalArgumentException if it cannot be so */
	public Customer with(CustomerField field, String text) {
		return new Customer(id, revision, field == CustomerField.NAME ? text : name,
				field == CustomerField.CONTACT ? text : contact, field == CustomerField.MAIL ? text : mail,
				field == CustomerField.PHONE ? text : phone, field == CustomerField.ADDRESS ? text : address,
				field == CustomerField.AGREEMENT ? text : agreement, field == CustomerField.NOTES ? text : notes, changed);
	}
}
