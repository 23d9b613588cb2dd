package org.frisket.orders.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.orders.NewOrder;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.csv.CsvProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables of orders, without an order book. */
class OrderTableTest {

	private static final OrderMapping GUESS = new OrderMapping(Map.of(), Optional.empty());
	private static final LocalDate FIRST_OF_MARCH = LocalDate.of(2027, 3, 1);

	private static OrderReading read(String text, OrderMapping said) {
		return OrderTable.read(text.getBytes(StandardCharsets.UTF_8), said);
	}

	private static NewOrder only(String text, OrderMapping said) {
		OrderReading reading = read(text, said);
		assertEquals(List.of(), reading.problems());
		assertEquals(1, reading.rows().size());
		return reading.rows().get(0).order();
	}

	@Test
	void headersAreGuessedInBothLanguagesWhateverPartsThem() {
		NewOrder expected = new NewOrder("Banner", "Brindle Sound Ferries", Optional.of(FIRST_OF_MARCH), 12, "wind");
		for (char part : new char[] { ',', ';', '\t', '|' }) {
			for (String headers : List.of("Title,Customer,Due,Quantity,Notes", "Job,Client,Due date,QTY,Remarks",
					"Titel,Kunde,Liefertermin,Anzahl,Bemerkung", "AUFTRAG,Firma,fällig am,Stückzahl,Notizen")) {
				String text = headers + "\nBanner,Brindle Sound Ferries,2027-03-01,12,wind\n";
				assertEquals(expected, only(text.replace(',', part), GUESS), headers);
			}
		}
	}

	@Test
	void whatIsSaidGoesBeforeWhatIsGuessed() {
		String text = "Name,Title,Who,When,Left\nBanner,Ms,Tern Bookshop,1.3.2027,7\n";
		NewOrder order = only(text, OrderMapping.parse("title=Name,customer=who,due=When,quantity=Left"));
		assertEquals(new NewOrder("Banner", "Tern Bookshop", Optional.of(FIRST_OF_MARCH), 7, ""), order);
		OrderReading wrong = read(text, OrderMapping.parse("title=Nmae"));
		assertEquals("row 1, column “Nmae”: there is no such column, which was to hold the title",
				wrong.problems().get(0).toString());
		assertEquals(List.of(), wrong.rows());
	}

	@Test
	void mappingIsReadAsItIsWritten() {
		OrderMapping mapping = OrderMapping.parse("title=What, exactly,due=Date,dates=mdy");
		assertEquals("What, exactly", mapping.headers().get(OrderField.TITLE));
		assertEquals(mapping, OrderMapping.parse(mapping.toString()));
		for (String wrong : List.of("title", "titel=Name", "title=", "title=a,title=b", "title=a,dates=ymd")) {
			assertThrows(IllegalArgumentException.class, () -> OrderMapping.parse(wrong), wrong);
		}
	}

	@Test
	void whatTheTableIsSaidNotToTellIsNotGuessed() {
		String text = "Title,Customer,Due\nBanner,Tern Bookshop,soon\n";
		OrderMapping mapping = OrderMapping.GUESSED.with(OrderField.CUSTOMER, "").with(OrderField.DUE, "");
		assertEquals(new NewOrder("Banner", "", Optional.empty(), 1, ""), only(text, mapping));
		assertEquals(mapping, OrderMapping.parse(mapping.toString()));
		assertEquals(1, read(text, OrderMapping.GUESSED.with(OrderField.TITLE, "")).problems().size());
	}

	@Test
	void headOfATableIsShownAsItStandsThere() {
		TableHead head = read(" Title ;;Title;Due\n\nTags;x;y;soon\n" + ";;;1.3.2027\n".repeat(40), OrderMapping.GUESSED).head();
		assertEquals(List.of("Title", "", "Title", "Due"), head.titles());
		assertEquals(List.of("Title", "Due"), head.columns());
		assertEquals(1, head.column("due"));
		assertEquals(-1, head.column(""));
		assertEquals(41, head.rows());
		assertEquals(List.of("Tags", "x", "y", "soon"), head.first().get(0).cells());
		assertEquals(3, head.first().get(0).number());
		assertTrue(head.first().size() < head.rows());
	}

	@Test
	void daysThatCanBeMistakenAreNotGuessed() {
		for (String day : List.of("2027-03-01", "2027-3-1", "2027/03/01", "1.3.2027", "01.03.27", "1. 3. 2027")) {
			assertEquals(FIRST_OF_MARCH, DateForm.parse(day, Optional.empty()), day);
		}
		for (String day : List.of("1/3/2027", "01-03-2027", "13/3/2027", "31.2.2027", "2027-02-29", "soon", "1.3.", "1.3/2027",
				"2027-13-01")) {
			assertThrows(IllegalArgumentException.class, () -> DateForm.parse(day, Optional.empty()), day);
		}
		assertEquals(FIRST_OF_MARCH, DateForm.parse("1/3/2027", Optional.of(DateForm.DMY)));
		assertEquals(FIRST_OF_MARCH, DateForm.parse("3/1/2027", Optional.of(DateForm.MDY)));
		assertEquals(FIRST_OF_MARCH, DateForm.parse("2027-03-01", Optional.of(DateForm.MDY)));
		assertThrows(IllegalArgumentException.class, () -> DateForm.parse("13/1/2027", Optional.of(DateForm.MDY)));
		assertThrows(IllegalArgumentException.class, () -> DateForm.parse("1.3.2027", Optional.of(DateForm.ISO)));
	}

	@Test
	void everyProblemIsNamedByRowAndColumn() {
		OrderReading reading = read("Title;Due;Qty;Ref\nTags;1/3/2027;x;A\n;;0;B\n\nCards;;3;C\nMore;;;C\n\"Open;;;\n", GUESS);
		assertEquals(List.of("2 Due", "2 Qty", "3 Qty", "3 Title", "6 Ref", "7 "),
				reading.problems().stream().map(problem -> problem.row() + " " + problem.column()).toList(),
				reading.problems().stream().map(CsvProblem::toString).toList().toString());
		assertEquals(List.of("Cards"), reading.rows().stream().map(row -> row.order().title()).toList());
	}

	@Test
	void encodingsOfSpreadsheetsAreRead() {
		String text = "Titel;Kunde\nBüttenpapier;Söhne\n";
		for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.ISO_8859_1)) {
			assertEquals("Büttenpapier", OrderTable.read(text.getBytes(charset), GUESS).rows().get(0).order().title());
		}
		assertEquals("Söhne", OrderTable.read(("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE), GUESS).rows().get(0)
				.order().customer());
		assertEquals(1, read("", GUESS).problems().size());
		assertTrue(read("Left,Right\na,b\n", GUESS).problems().get(0).toString().contains("Left, Right"));
	}

	@Test
	void studioRemembersMappings(@TempDir Path folder) throws Exception {
		RememberedMappings remembered = new RememberedMappings(new StudioFolder(folder.resolve("studio")));
		OrderMapping mapping = OrderMapping.parse("title=Größe = wie?,dates=dmy");
		remembered.remember("shop", mapping);
		assertEquals(Optional.of(mapping), remembered.recall("shop"));
		assertEquals(Optional.empty(), remembered.recall("other"));
		remembered.remember("abc", OrderMapping.parse("title=What,due=When"));
		assertEquals(List.of("abc", "shop"), remembered.names());
		assertEquals(Optional.of("abc"), remembered.fitting(read("WHEN;What;More\na;b;c\n", GUESS).head()));
		assertEquals(Optional.empty(), remembered.fitting(read("What;More\na;b\n", GUESS).head()));
		assertThrows(IllegalArgumentException.class, () -> remembered.remember("a=b", mapping));
	}
}
