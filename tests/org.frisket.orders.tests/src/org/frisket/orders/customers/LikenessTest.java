package org.frisket.orders.customers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;

/** What names have in common; the properties hold for names made by lot. */
class LikenessTest {

	private static final int MANY = 400;

	private final Random random = new Random(1723);

	private String word(int least) {
		StringBuilder word = new StringBuilder();
		for (int i = least + random.nextInt(6); i > 0; i--) {
			word.append((char) ('a' + random.nextInt(26)));
		}
		return word.toString();
	}

	private List<String> words() {
		List<String> words = new ArrayList<>();
		for (int i = 1 + random.nextInt(3); i > 0; i--) {
			words.add(word(4));
		}
		return words;
	}

	@Test
	void orderCaseMarksAndFormsHaveNoWeight() {
		for (int i = 0; i < MANY; i++) {
			List<String> words = words();
			String name = String.join(" ", words);
			Collections.shuffle(words, random);
			assertEquals(1, Likeness.of(name, String.join("  ", words).toUpperCase(Locale.ROOT)), name);
			assertEquals(1, Likeness.of(name, name.replace("a", "á").replace("u", "ü") + ", Ltd."), name);
		}
		assertEquals(1, Likeness.of("Strauß & Söhne GmbH", "strauss und sohne"));
		assertEquals(1, Likeness.of("The Co", "the co"));
	}

	@Test
	void likenessIsTheSameBothWaysAndWithinItsBounds() {
		for (int i = 0; i < MANY; i++) {
			String one = String.join(" ", words());
			String other = String.join(" ", words());
			double likeness = Likeness.of(one, other);
			assertEquals(likeness, Likeness.of(other, one));
			assertTrue(likeness >= 0 && likeness <= 1, one + ", " + other);
			assertEquals(1, Likeness.of(one, one));
		}
	}

	@Test
	void distanceIsOne() {
		for (int i = 0; i < MANY; i++) {
			String a = word(0);
			String b = word(0);
			String c = word(0);
			assertTrue(Likeness.distance(a, c) <= Likeness.distance(a, b) + Likeness.distance(b, c), a + b + c);
			assertEquals(a.equals(b), Likeness.distance(a, b) == 0);
		}
		// textbook values
		assertEquals(3, Likeness.distance("kitten", "sitting"));
		assertEquals(4, Likeness.distance("", "card"));
	}

	@Test
	void aSlipInALongNameIsProposedAndAnotherNameIsNot() {
		for (int i = 0; i < MANY; i++) {
			String name = word(4) + " " + word(4);
			int at = random.nextInt(name.length());
			if (name.charAt(at) != ' ') {
				String slip = name.substring(0, at) + name.substring(at + 1);
				assertEquals(1, LikeCustomers.among(List.of(Customer.named(name), Customer.named(slip))).size(), name);
			}
		}
		assertEquals(List.of(), LikeCustomers.among(List.of(Customer.named("Tern Bookshop"), Customer.named("Kelp & Anchor"),
				Customer.named("Bo"), Customer.named("Ba"))));
	}

	@Test
	void whoeverHasOneMailOrPhoneMayBeOne() {
		Customer one = Customer.named("Sandlewick").with(CustomerField.PHONE, "+49 555 010 0199");
		Customer two = Customer.named("Net Loft Studio").with(CustomerField.PHONE, "0555/0100199");
		Customer three = Customer.named("Quay").with(CustomerField.MAIL, "a@b.example");
		Customer four = Customer.named("Lighthouse").with(CustomerField.MAIL, "A@B.example ");
		List<LikeCustomers> pairs = LikeCustomers.among(List.of(one, two, three, four));
		assertEquals(2, pairs.size(), pairs.toString());
		assertTrue(pairs.stream().anyMatch(pair -> pair.reason() == LikeCustomers.Reason.PHONE && pair.one() == one));
		assertTrue(pairs.stream().anyMatch(pair -> pair.reason() == LikeCustomers.Reason.MAIL && pair.one() == three));
	}
}
