package org.frisket.orders.work.again;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.orders.Entry;
import org.frisket.orders.Fact;
import org.frisket.orders.customers.Customer;
import org.frisket.prepare.Severity;

/** What has become of whom a job was made for, and of what was agreed. */
final class CustomerNotes {

	private CustomerNotes() {
	}

	static List<Note> of(Entry entry, Optional<Customer> customer, List<Fact> facts) {
		List<Note> notes = new ArrayList<>();
		if (customer.isEmpty()) {
			return notes;
		}
		Optional<String> name = then(facts, Fact.NAME);
		if (customer.get().isErased() || name.filter(String::isBlank).isPresent()) {
			notes.add(new Note(Severity.CAUTION, Messages.CustomerNotes_customer, Messages.CustomerNotes_known, entry.customer(),
					Messages.CustomerNotes_erasedCure));
			return notes;
		}
		name.filter(was -> !was.equals(customer.get().name())).ifPresent(was -> notes.add(new Note(Severity.NOTE,
				Messages.CustomerNotes_customer, was, customer.get().name(), Messages.CustomerNotes_nameCure)));
		then(facts, Fact.AGREEMENT).filter(was -> !was.equals(customer.get().agreement()))
				.ifPresent(was -> notes.add(new Note(Severity.CAUTION, Messages.CustomerNotes_agreement, orNone(was),
						orNone(customer.get().agreement()), Messages.CustomerNotes_agreementCure)));
		return notes;
	}

	private static Optional<String> then(List<Fact> facts, String field) {
		return facts.stream().filter(fact -> fact.subject() == Fact.Subject.CUSTOMER && fact.field().equals(field))
				.map(Fact::text).findFirst();
	}

	private static String orNone(String text) {
		return text.isBlank() ? Messages.StudioNotes_nothing : text;
	}
}
