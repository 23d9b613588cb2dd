package org.frisket.orders.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import javax.xml.parsers.DocumentBuilderFactory;

import org.frisket.geometry.Monitor;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.model.Sheet;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Tickets of jobs as they stand in the order book, whatever is in them, read by a reader that knows nothing of the writer. */
class TicketMakerTest {

	private static final Clock CLOCK = Clock.fixed(Instant.parse("2027-03-01T09:00:00Z"), ZoneOffset.UTC);

	@TempDir
	private Path home;

	private Document ticket(Job job) throws Exception {
		StudioFolder studio = new StudioFolder(home.resolve("studio"));
		long number = new OrderBook(studio).takeIn(List.of(job), true, "Ottoline").get(0).number();
		Path file = home.resolve("ticket.xjdf");
		new TicketMaker(studio, new JobPreparer(FontLibraries.installed()), CLOCK).write(number, List.of(), file, Monitor.NONE);
		Document xml = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
		assertEquals(Long.toString(number), xml.getDocumentElement().getAttribute("JobID"));
		Set<String> ids = new HashSet<>();
		for (int i = 0; i < xml.getElementsByTagName("*").getLength(); i++) {
			String id = ((Element) xml.getElementsByTagName("*").item(i)).getAttribute("ID");
			assertTrue(id.isEmpty() || ids.add(id), id);
		}
		return xml;
	}

	private static Element first(Document xml, String name) {
		return (Element) xml.getElementsByTagName(name).item(0);
	}

	@Test
	void jobOfWhichNothingIsKnownIsATicket() throws Exception {
		Job job = Jobs.create("bare", "<bare> & \"blank\"");
		job.setCustomer("Kelp & <Anchor>");
		job.setQuantity(0);
		Document xml = ticket(job);
		assertEquals("<bare> & \"blank\"", first(xml, "CustomerInfo").getAttribute("CustomerJobName"));
		assertEquals("Kelp & <Anchor>", first(xml, "Company").getAttribute("OrganizationName"));
		assertFalse(first(xml, "Product").hasAttribute("Amount"));
		assertFalse(first(xml, "NodeInfo").hasAttribute("LastEnd"));
		assertEquals(0, xml.getElementsByTagName("Media").getLength());
		assertEquals(0, xml.getElementsByTagName("ShapeCut").getLength());
	}

	@Test
	void picturesSheetsAndLayersWithoutStockAreToldOnce() throws Exception {
		Job job = SamplePapers.tags();
		for (int i = 0; i < 3; i++) {
			Sheet sheet = Jobs.addSheet(job, "harbour-blue", 300, 200);
			Jobs.addPlacement(sheet, job.getLayers().get(0).getElements().get(0).getId(), 55, 45, 0);
		}
		assertEquals(5, job.getSheets().size());
		Layer art = Jobs.addLayer(job, "Art");
		Picture picture = FrisketFactory.INSTANCE.createPicture();
		picture.setId("picture");
		art.getElements().add(picture);
		Jobs.addOperation(picture, OperationKind.PRINT);
		Document xml = ticket(job);
		assertEquals("DigitalPrinting ShapeCutting", xml.getDocumentElement().getAttribute("Types"));
		assertEquals(1, xml.getElementsByTagName("Media").getLength());
		// 300 mm by 200 mm
		assertEquals("850.3937 566.9291", first(xml, "Media").getAttribute("Dimension"));
		assertEquals("12", first(xml, "Product").getAttribute("Amount"));
		assertEquals("2027-03-01T23:59:59Z", first(xml, "NodeInfo").getAttribute("LastEnd"));
		// the line that is written on is drawn, the picture is printed: only the tag is cut
		assertEquals(1, xml.getElementsByTagName("ShapeCut").getLength());
	}

	@Test
	void ticketThatCannotBeWrittenLeavesNoFile() {
		StudioFolder studio = new StudioFolder(home.resolve("studio"));
		Path file = home.resolve("none.xjdf");
		assertThrows(OrderException.class, () -> new TicketMaker(studio, new JobPreparer(FontLibraries.installed()), CLOCK)
				.write(7, List.of(), file, Monitor.NONE));
		assertFalse(Files.exists(file));
	}
}
