package org.frisket.orders.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.studio.StudioFolder;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables of orders that come as nobody would wish: all is taken in or nothing, and what is wrong is named. */
class OrderIntakeTest extends BothDatabases {

	private static final OrderMapping GUESS = new OrderMapping(Map.of(), Optional.empty());
	private static final int MANY = 3000;

	private record Wrong(byte[] file, List<String> said) {
	}

	private static Wrong wrong(String text, String... said) {
		return new Wrong(text.getBytes(StandardCharsets.UTF_8), List.of(said));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void wrongTablesAreNamedByRowAndLeaveNothing(boolean shared) throws Exception {
		StudioFolder studio = emptyStudio(shared);
		OrderIntake intake = new OrderIntake(studio);
		List<Wrong> all = List.of(wrong("", "row 1: the table is empty"), wrong("\uFEFF", "row 1: the table is empty"),
				wrong("\r\n ; ;\r\n", "row 1: the table is empty"), wrong("one word", "none of the columns holds the titles"),
				wrong("Title;Qty\nTags;1,5\n", "row 2, column \u201CQty\u201D: \u201C1,5\u201D"),
				wrong("Title;Qty\nTags;1.000\nCards;-3\n", "row 2, column \u201CQty\u201D", "row 3, column \u201CQty\u201D"),
				wrong("Title;Qty\nTags;99999999999\n", "row 2, column \u201CQty\u201D"),
				wrong("Title,Due\nGood,\nTags,31.2.2027\nCards,02/03/2027\n", "row 3, column \u201CDue\u201D", "row 4, column \u201CDue\u201D"),
				wrong("Title,Notes\nGood,a\n\"Tags,b\nCards,c\n", "row 3: quotes do not match"),
				wrong("Title,Title\na,b\n", "there are several such columns"),
				wrong("Title\nnul \u0000 in it\n", "row 2"), wrong("Title,Ref\nA,7\nB,7\n", "row 3, column \u201CRef\u201D"),
				new Wrong("\uFEFFTitle\nTags\n".getBytes(StandardCharsets.UTF_16LE), List.of()),
				new Wrong(new byte[] { (byte) 0xFF, (byte) 0xFE, 0x54 }, List.of("encoding")),
				new Wrong(new byte[] { 'P', 'K', 3, 4, 20, 0, 0, 0, 8, 0 }, List.of("none of the columns")));
		for (Wrong each : all) {
			OrderReading reading = intake.read(each.file(), GUESS, false);
			String said = reading.problems().toString();
			assertEquals(each.said().size(), reading.problems().size(), said);
			for (int i = 0; i < each.said().size(); i++) {
				assertTrue(reading.problems().get(i).toString().contains(each.said().get(i)), said);
			}
			if (!each.said().isEmpty()) {
				assertThrows(IllegalArgumentException.class, () -> intake.takeIn(reading, "Ottoline"));
			}
		}
		assertEquals(List.of(), new OrderBook(studio).list(10));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatSpreadsheetsWriteIsTaken(boolean shared) throws Exception {
		StudioFolder studio = emptyStudio(shared);
		OrderIntake intake = new OrderIntake(studio);
		String text = "\uFEFFTitel;Kunde;Termin;Anzahl;Notizen;Bestellnummer\r\n"
				+ "\"Tischkarten \"\"M\u00F6we\"\"\";Kelp & Anker;1.3.2027;40;\"erst falzen;\r\ndann schneiden\";'; DROP TABLE orders_job; --\r\n"
				+ ";;;;;\r\nBanner;;;;;\r\n";
		for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE)) {
			OrderReading reading = intake.read(text.getBytes(charset), GUESS, true);
			assertEquals(List.of(), reading.problems());
			intake.takeIn(reading, "Ottoline");
		}
		List<Entry> jobs = new OrderBook(studio).list(10);
		// the row with the reference is known the second time
		assertEquals(List.of("Banner", "Banner", "Tischkarten \"M\u00F6we\""),
				jobs.stream().map(Entry::title).toList());
		Entry cards = jobs.get(2);
		assertEquals("Kelp & Anker", cards.customer());
		assertEquals(Optional.of(LocalDate.of(2027, 3, 1)), cards.due());
		assertEquals(40, cards.quantity());
		assertEquals("erst falzen;\r\ndann schneiden".lines().toList(),
				new OrderBook(studio).open(cards.number()).job().getNotes().lines().toList());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void longTableThatMeetsAnotherDeskIsTakenInWholeOrNotAtAll(boolean shared) throws Exception {
		StudioFolder studio = emptyStudio(shared);
		OrderIntake intake = new OrderIntake(studio);
		StringBuilder text = new StringBuilder("Title,Customer,Ref\n");
		for (int i = 1; i <= MANY; i++) {
			text.append("Place cards ").append(i).append(",Guest ").append(i % 7).append(",R-").append(i).append('\n');
		}
		OrderReading table = intake.read(text.toString().getBytes(StandardCharsets.UTF_8), GUESS, false);
		OrderReading last = intake.read(("Title,Ref\nMine,R-" + MANY + "\n").getBytes(StandardCharsets.UTF_8), GUESS, false);
		long first = intake.takeIn(last, "Quill").get(0).number();
		OrderException known = assertThrows(OrderException.class, () -> intake.takeIn(table, "Ottoline"));
		assertTrue(known.getMessage().contains("R-" + MANY) && known.getMessage().contains("job " + first), known.getMessage());
		assertEquals(1, new OrderBook(studio).list(10).size());
		OrderReading fresh = intake.read(text.toString().getBytes(StandardCharsets.UTF_8), GUESS, true);
		List<Entry> taken = intake.takeIn(fresh, "Ottoline");
		assertEquals(MANY - 1, taken.size());
		// nothing is left out in the numbers, whatever was refused before
		assertEquals(first + MANY - 1, taken.get(taken.size() - 1).number());
	}
}
