package org.frisket.orders.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.CustomerField;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Tickets against the table of facts, which knows nothing of how they are written. */
class XjdfWriterTest {

	private static final Instant MADE = Instant.parse("2027-03-27T10:00:00.5Z");

	private static final Customer CUSTOMER = Customer.named("Kelp & \"Anchor\"").with(CustomerField.MAIL, "office@kelp.example")
			.with(CustomerField.PHONE, "+49 (555) 0100").with(CustomerField.ADDRESS, "2 Net Loft\nQuay <1>")
			.with(CustomerField.CONTACT, "Ottoline");

	private static JobTicket ticket(Stage stage, Optional<Customer> customer, List<TicketMedium> media,
			List<TicketPart> parts) {
		Entry entry = new Entry("x", 17, 1, "Banner <50> \u0001", "", stage, MADE, Optional.of(LocalDate.of(2027, 3, 28)), 12,
				"", "", MADE, "Ottoline");
		return new JobTicket(entry, "mind the wind", "A-1", customer, media, parts,
				List.of(URI.create("file:///tmp/ferry%20banner.pdf")), true, MADE, ZoneId.of("Europe/Berlin"));
	}

	private static TicketMedium card() {
		return new TicketMedium("Harbour card", TicketMedium.Kind.PAPER, OptionalDouble.of(700), OptionalDouble.of(670),
				OptionalDouble.of(216), OptionalDouble.of(0.29));
	}

	private static Outline square() {
		return Outline.of(Contour.polygon(List.of(new Point(10, 10), new Point(35.4, 10), new Point(35.4, 35.4),
				new Point(10, 35.4))));
	}

	private static Document checked(JobTicket ticket) throws Exception {
		Document xml = TicketRules.parse(XjdfWriter.toBytes(ticket));
		assertEquals(List.of(), TicketRules.check(xml));
		return xml;
	}

	private static Element only(Document xml, String name) {
		assertEquals(1, xml.getElementsByTagName(name).getLength(), name);
		return (Element) xml.getElementsByTagName(name).item(0);
	}

	@Test
	void ticketHasAllThatIsKnown() throws Exception {
		JobTicket ticket = ticket(Stage.PRINTED, Optional.of(CUSTOMER), List.of(card()),
				List.of(new TicketPart("Square", TicketPart.Cut.KISS_CUT, square())));
		Document xml = checked(ticket);
		Element root = xml.getDocumentElement();
		assertEquals("17", root.getAttribute("JobID"));
		assertEquals("DigitalPrinting ShapeCutting", root.getAttribute("Types"));
		assertEquals("12", only(xml, "Product").getAttribute("Amount"));
		assertEquals("Banner <50> ", only(xml, "CustomerInfo").getAttribute("CustomerJobName"));
		assertEquals("A-1", only(xml, "CustomerInfo").getAttribute("CustomerOrderID"));
		assertEquals("Kelp & \"Anchor\"", only(xml, "Company").getAttribute("OrganizationName"));
		assertEquals(List.of("2 Net Loft", "Quay <1>"),
				TicketRules.children(only(xml, "Address")).stream().map(Element::getTextContent).toList());
		assertEquals("tel:+495550100", ((Element) xml.getElementsByTagName("ComChannel").item(0)).getAttribute("Locator"));
		assertEquals("mind the wind", only(xml, "Comment").getTextContent());
		assertEquals("file:///tmp/ferry%20banner.pdf", only(xml, "FileSpec").getAttribute("URL"));
		assertEquals("InProgress", only(xml, "NodeInfo").getAttribute("Status"));
		// an hour is missing that day: it ends by summer time
		assertEquals("2027-03-28T23:59:59+02:00", only(xml, "NodeInfo").getAttribute("LastEnd"));
		assertEquals("2027-03-27T10:00:00Z", only(xml, "Header").getAttribute("Time"));
		// the published sample has 1984.25 x 1899.21 for 700 mm x 670 mm
		assertEquals("1984.252 1899.2126", only(xml, "Media").getAttribute("Dimension"));
		assertEquals("216", only(xml, "Media").getAttribute("Weight"));
		assertEquals("290", only(xml, "Media").getAttribute("Thickness"));
		assertEquals("OneSidedFront", only(xml, "DigitalPrintingParams").getAttribute("Sides"));
		assertEquals("Partial", only(xml, "ShapeCut").getAttribute("CutDepth"));
		assertArrayEquals(XjdfWriter.toBytes(ticket), XjdfWriter.toBytes(ticket));
	}

	@Test
	void cutsAreInPointsFromTheLowerLeftCorner() throws Exception {
		Document xml = checked(ticket(Stage.ORDERED, Optional.empty(), List.of(),
				List.of(new TicketPart("Square", TicketPart.Cut.CUT, square()))));
		// 25.4 mm are 72 points, and the upper left corner of ours is at the top of theirs
		assertEquals("0 72 m 72 72 l 72 0 l 0 0 l h", only(xml, "Shape").getAttribute("CutPath"));
		assertEquals("0 0 72 72", only(xml, "Shape").getAttribute("CutBox"));
		assertEquals("0 72 m 72 72 l 72 0 l 0 0 l h", only(xml, "ShapeCut").getAttribute("CutPath"));
		assertEquals("Waiting", only(xml, "NodeInfo").getAttribute("Status"));
	}

	@Test
	void linesAndCurvesStayWhatTheyAre() throws Exception {
		Outline outline = PathData.parse("M0 0C0 25.4 25.4 25.4 25.4 0M0 0L25.4 0");
		Document xml = checked(ticket(Stage.CANCELLED, Optional.empty(), List.of(),
				List.of(new TicketPart("Hook", TicketPart.Cut.PERFORATE, outline))));
		String path = only(xml, "Shape").getAttribute("CutPath");
		assertTrue(path.matches("0 \\S+ m 0 -?\\S+ 72 -?\\S+ 72 \\S+ c 0 \\S+ m 72 \\S+ l"), path);
		assertEquals("Perforate", only(xml, "ShapeCut").getAttribute("CutType"));
	}

	@Test
	void anyTicketKeepsTheRules() throws Exception {
		Random random = new Random(1850);
		for (int i = 0; i < 60; i++) {
			List<TicketPart> parts = new ArrayList<>();
			for (int p = random.nextInt(4); p > 0; p--) {
				List<Point> corners = new ArrayList<>();
				for (int c = 3 + random.nextInt(5); c > 0; c--) {
					corners.add(new Point(random.nextGaussian() * 300, random.nextGaussian() * 1e-3));
				}
				parts.add(new TicketPart("p" + p, TicketPart.Cut.values()[random.nextInt(3)],
						Outline.of(Contour.polygon(corners))));
			}
			OptionalDouble maybe = random.nextBoolean() ? OptionalDouble.of(random.nextDouble() + 1e-6) : OptionalDouble.empty();
			List<TicketMedium> media = random.nextBoolean() ? List.of()
					: List.of(card(), new TicketMedium("", TicketMedium.Kind.values()[random.nextInt(5)], maybe, maybe, maybe,
							maybe));
			checked(ticket(Stage.values()[i % Stage.values().length],
					random.nextBoolean() ? Optional.of(CUSTOMER) : Optional.of(Customer.named("Bo")), media, parts));
		}
	}

	@Test
	void whateverPeopleTypeIsATicketThatKeepsTheRules() throws Exception {
		List<String> nasty = List.of("<job> & \"quotes\" 'and' ]]>", "a\u0000b\u0001\u000B\u001F\uFFFE\uD800c", "tab\tand\r\nline",
				"&amp;&#0;<!-- --><?x?>", "\u202Eright to left \uD83D\uDE00", "'; DROP TABLE orders_job; --", " ", "");
		for (String text : nasty) {
			for (int quantity : new int[] { 0, 1, Integer.MAX_VALUE }) {
				Customer customer = Customer.named("Kelp " + text).with(CustomerField.MAIL, text.strip())
						.with(CustomerField.PHONE, text).with(CustomerField.ADDRESS, text).with(CustomerField.CONTACT, text);
				Entry entry = new Entry("x", 17, 1, text, "Kelp " + text, Stage.ENQUIRY, MADE, Optional.empty(), quantity, "", "", MADE,
						text);
				Document xml = checked(new JobTicket(entry, text, text, Optional.of(customer),
						List.of(new TicketMedium(text, TicketMedium.Kind.PAPER, OptionalDouble.empty(), OptionalDouble.empty(),
								OptionalDouble.empty(), OptionalDouble.empty())),
						List.of(new TicketPart(text, TicketPart.Cut.CUT, square())), List.of(), false, MADE, ZoneId.of("UTC")));
				assertEquals(quantity < 1 ? "" : Integer.toString(quantity), only(xml, "Product").getAttribute("Amount"));
				assertEquals("", only(xml, "NodeInfo").getAttribute("LastEnd"));
				String kept = text.replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\uFFFE\\uD800]", "").replace("\r", "");
				assertEquals(kept.replaceAll("\\s", " "),
						only(xml, "CustomerInfo").getAttribute("CustomerJobName").replaceAll("\\s", " "));
			}
		}
	}

	@Test
	void rulesTellWhatIsWrong() throws Exception {
		String good = new String(XjdfWriter.toBytes(ticket(Stage.CUT, Optional.of(CUSTOMER), List.of(card()),
				List.of(new TicketPart("Square", TicketPart.Cut.CUT, square())))), StandardCharsets.UTF_8);
		for (String[] change : new String[][] { { "JobID=\"17\"", "" }, { "72 72 l", "72 l" },
				{ "CutType=\"Cut\"", "CutType=\"Saw\"" },
				{ "MediaType=\"Paper\"", "" }, { "<Comment>", "<Comment><Component/>" }, { "Weight=\"216\"", "Weight=\"216 g\"" },
				{ "ProductList>", "ProductLists>" }, { "IsRoot=\"true\"", "IsRoot=\"yes\"" }, { "Usage=\"Input\"", "Use=\"Input\"" } }) {
			String bad = good.replace(change[0], change[1]);
			assertFalse(bad.equals(good), change[0]);
			assertFalse(TicketRules.check(TicketRules.parse(bad.getBytes(StandardCharsets.UTF_8))).isEmpty(), change[0]);
		}
	}

	@Test
	void measuresAreAboveZero() {
		OptionalDouble none = OptionalDouble.empty();
		for (double wrong : new double[] { 0, -1, Double.NaN, Double.POSITIVE_INFINITY }) {
			assertThrows(IllegalArgumentException.class, () -> new TicketMedium("x", TicketMedium.Kind.FILM,
					OptionalDouble.of(wrong), none, none, none));
		}
	}
}
