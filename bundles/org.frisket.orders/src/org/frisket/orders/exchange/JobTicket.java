package org.frisket.orders.exchange;

import java.net.URI;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

import org.frisket.orders.Entry;
import org.frisket.orders.customers.Customer;

/**
 * A job as others are told of it.
 *
 * @param notes     free remarks; may be empty
 * @param reference what it is called where it comes from; may be empty
 * @param media     what it is made of, the one that says most first
 * @param art       files with what is printed
 * @param printed   whether anything of it is printed
 * @param made      when the ticket was
 * @param zone      of the calendar that the day it is due is a day of
 */
public record JobTicket(Entry entry, String notes, String reference, Optional<Customer> customer, List<TicketMedium> media,
		List<TicketPart> parts, List<URI> art, boolean printed, Instant made, ZoneId zone) {

	public JobTicket {
		media = List.copyOf(media);
		parts = List.copyOf(parts);
		art = List.copyOf(art);
	}
}
