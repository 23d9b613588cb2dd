package org.frisket.orders.customers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Two customers that may be one.
 *
 * @param likeness of their names, from 0 to 1
 * @param reason   what they have in common
 */
public record LikeCustomers(Customer one, Customer other, double likeness, Reason reason) {

	/** What two customers have in common. */
	public enum Reason {
		NAME, MAIL, PHONE
	}

	/** A shorter number is an extension, or a slip. */
	private static final int DIGITS = 7;

	/** Of all pairs, those that may be one; the likeliest first, then by name. */
	public static List<LikeCustomers> among(List<Customer> customers) {
		List<List<String>> words = customers.stream().map(customer -> Likeness.words(customer.name())).toList();
		List<Integer> lengths = words.stream().map(each -> String.join(" ", each).length()).toList();
		List<LikeCustomers> like = new ArrayList<>();
		for (int i = 0; i < customers.size(); i++) {
			for (int j = i + 1; j < customers.size(); j++) {
				Customer one = customers.get(i);
				Customer other = customers.get(j);
				boolean contact = isSame(one.mail(), other.mail()) || isSamePhone(one.phone(), other.phone());
				// so different in length cannot be alike enough: most pairs are done with here
				int longer = Math.max(lengths.get(i), lengths.get(j));
				boolean possible = Math.abs(lengths.get(i) - lengths.get(j)) <= (1 - Likeness.ENOUGH) * longer + 1e-9;
				double likeness = contact || possible ? Likeness.of(words.get(i), words.get(j)) : 0;
				if (likeness >= Likeness.ENOUGH) {
					like.add(new LikeCustomers(one, other, likeness, Reason.NAME));
				} else if (contact) {
					like.add(new LikeCustomers(one, other, likeness,
							isSame(one.mail(), other.mail()) ? Reason.MAIL : Reason.PHONE));
				}
			}
		}
		like.sort(Comparator.comparingDouble(LikeCustomers::likeness).reversed()
				.thenComparing(pair -> pair.one().name()).thenComparing(pair -> pair.other().name()));
		return like;
	}

	private static boolean isSame(String mail, String other) {
		return !mail.isBlank() && mail.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
	}

	/** By the last digits, since the country's may be left out and a zero said instead. */
	private static boolean isSamePhone(String phone, String other) {
		String one = digits(phone);
		String two = digits(other);
		return Math.min(one.length(), two.length()) >= DIGITS && (one.endsWith(two) || two.endsWith(one));
	}

	private static String digits(String phone) {
		return phone.replaceAll("\\D", "").replaceFirst("^0+", "");
	}
}
