package org.frisket.orders.exchange;

import java.io.ByteArrayOutputStream;
import java.net.URI;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

import javax.xml.stream.XMLStreamException;

import org.frisket.geometry.Bounds;
import org.frisket.model.Stage;
import org.frisket.orders.customers.Customer;

/**
 * A job as an XJDF 2.2 ticket: what is wanted (ProductList), by when, for whom, of what, and along what it is cut. Lines
 * that are drawn or creased are not in it. The names of elements and attributes, their order and their units are those of
 * the published schema and its samples (cip4/XJDF-Schema on GitHub, November 2025); that a Person has a FamilyName is from
 * memory.
 */
public final class XjdfWriter {

	/** Of files that hold one. */
	public static final String ENDING = ".xjdf";

	private static final double MICRONS_PER_MM = 1000;

	private final JobTicket ticket;
	private final CutPath paths;
	private final TicketXml xml;

	private XjdfWriter(JobTicket ticket, TicketXml xml) {
		this.ticket = ticket;
		this.xml = xml;
		paths = new CutPath(ticket.parts().stream().map(part -> part.outline().bounds()).reduce(Bounds.EMPTY, Bounds::with));
	}

	/** The same ticket gives the same bytes. */
	public static byte[] toBytes(JobTicket ticket) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		try {
			new XjdfWriter(ticket, new TicketXml(out, "XJDF")).write();
		} catch (XMLStreamException e) {
			throw new IllegalStateException(e);
		}
		return out.toByteArray();
	}

	private void write() throws XMLStreamException {
		String number = Long.toString(ticket.entry().number());
		xml.with("JobID", number, "Types", ticket.printed() ? "DigitalPrinting ShapeCutting" : "ShapeCutting", "Version",
				"2.2");
		xml.open("AuditPool").open("AuditCreated")
				.open("Header", "DeviceID", "frisket", "Time", ticket.made().truncatedTo(ChronoUnit.SECONDS).toString())
				.close().close().close();
		if (!ticket.notes().isBlank()) {
			xml.open("Comment").text(ticket.notes()).close();
		}
		product();
		nodeInfo();
		customer();
		media();
		art();
		printing();
		cuts();
		component();
		xml.end();
	}

	private void product() throws XMLStreamException {
		xml.open("ProductList").open("Product", "Amount", amount(), "IsRoot", "true");
		if (!ticket.media().isEmpty()) {
			TicketMedium medium = ticket.media().get(0);
			xml.open("Intent", "Name", "MediaIntent").open("MediaIntent", "MediaType", medium.kind().word(), "Thickness",
					microns(medium), "Weight", grammage(medium)).close().close();
		}
		if (!ticket.parts().isEmpty()) {
			xml.open("Intent", "Name", "ShapeCuttingIntent").open("ShapeCuttingIntent");
			for (TicketPart part : ticket.parts()) {
				xml.open("ShapeCut", "CutDepth", part.cut().depth(), "CutPath", paths.of(part.outline()), "CutType",
						part.cut().type(), "ShapeType", "Path").close();
			}
			xml.close().close();
		}
		xml.close().close();
	}

	/** None, while nobody has said how many. */
	private String amount() {
		return ticket.entry().quantity() < 1 ? "" : Integer.toString(ticket.entry().quantity());
	}

	private void nodeInfo() throws XMLStreamException {
		resource("NodeInfo");
		xml.open("NodeInfo", "LastEnd", ticket.entry().due().map(day -> day.plusDays(1).atStartOfDay(ticket.zone()))
				.map(XjdfWriter::lastSecond).orElse(""), "Status", status(ticket.entry().stage())).close();
		closeResource();
	}

	/** A day is over when the next one begins, also where that is not 24 hours later. */
	private static String lastSecond(ZonedDateTime nextDay) {
		return nextDay.minusSeconds(1).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
	}

	private static String status(Stage stage) {
		return switch (stage) {
		case PRINTED, CUT -> "InProgress";
		case FINISHED, DELIVERED -> "Completed";
		case ON_HOLD -> "Suspended";
		case CANCELLED -> "Aborted";
		default -> "Waiting";
		};
	}

	private void customer() throws XMLStreamException {
		resource("CustomerInfo");
		xml.open("CustomerInfo", "CustomerID", ticket.customer().map(Customer::id).orElse(""), "CustomerJobName",
				ticket.entry().title(), "CustomerOrderID", token(ticket.reference())).close();
		closeResource();
		if (ticket.customer().isPresent()) {
			Customer customer = ticket.customer().get();
			resource("Contact");
			xml.open("Contact");
			if (!customer.address().isBlank()) {
				xml.open("Address");
				for (String line : customer.address().strip().split("\\s*[\\r\\n]+\\s*")) {
					xml.open("AddressLine").text(line).close();
				}
				xml.close();
			}
			channel("Phone", "tel:", customer.phone().replaceAll("[^\\d+]", ""));
			channel("Email", "mailto:", customer.mail().strip());
			xml.open("Company", "OrganizationName", customer.name()).close();
			if (!customer.contact().isBlank()) {
				xml.open("Person", "FamilyName", customer.contact()).close();
			}
			xml.close();
			closeResource();
		}
	}

	/** What is no token of XML cannot stand where one must, and is left out rather than written otherwise. */
	private static String token(String text) {
		return text.matches("[\\p{L}\\p{N}._:-]+") ? text : "";
	}

	private void channel(String type, String scheme, String locator) throws XMLStreamException {
		if (!locator.isEmpty()) {
			xml.open("ComChannel", "ChannelType", type, "Locator", scheme + locator).close();
		}
	}

	private void media() throws XMLStreamException {
		if (ticket.media().isEmpty()) {
			return;
		}
		xml.open("ResourceSet", "Name", "Media", "Usage", "Input");
		for (TicketMedium medium : ticket.media()) {
			String dimension = medium.width().isPresent() && medium.height().isPresent()
					? CutPath.points(medium.width().getAsDouble()) + ' ' + CutPath.points(medium.height().getAsDouble())
					: "";
			xml.open("Resource", "DescriptiveName", medium.name()).open("Media", "Dimension", dimension, "MediaType",
					medium.kind().word(), "Thickness", microns(medium), "Weight", grammage(medium)).close().close();
		}
		xml.close();
	}

	private static String microns(TicketMedium medium) {
		return medium.caliper().isPresent() ? CutPath.number(medium.caliper().getAsDouble() * MICRONS_PER_MM) : "";
	}

	private static String grammage(TicketMedium medium) {
		return medium.grammage().isPresent() ? CutPath.number(medium.grammage().getAsDouble()) : "";
	}

	private void art() throws XMLStreamException {
		if (ticket.art().isEmpty()) {
			return;
		}
		xml.open("ResourceSet", "Name", "RunList", "Usage", "Input");
		for (URI file : ticket.art()) {
			xml.open("Resource").open("RunList").open("FileSpec", "URL", file.toASCIIString()).close().close().close();
		}
		xml.close();
	}

	/** Our pictures lie on the front. */
	private void printing() throws XMLStreamException {
		if (ticket.printed()) {
			resource("DigitalPrintingParams");
			xml.open("DigitalPrintingParams", "Sides", "OneSidedFront").close();
			closeResource();
		}
	}

	private void cuts() throws XMLStreamException {
		if (ticket.parts().isEmpty()) {
			return;
		}
		resource("ShapeCuttingParams");
		xml.open("ShapeCuttingParams");
		for (TicketPart part : ticket.parts()) {
			xml.open("Shape", "CutBox", paths.box(part.outline().bounds()), "CutPath", paths.of(part.outline()), "ShapeType",
					"Path").close();
		}
		xml.close();
		closeResource();
	}

	private void component() throws XMLStreamException {
		xml.open("ResourceSet", "Name", "Component", "Usage", "Output")
				.open("Resource", "DescriptiveName", ticket.entry().title()).open("AmountPool")
				.open("PartAmount", "Amount", amount()).close().close().open("Component")
				.close().close().close();
	}

	/** A set of one that goes in. */
	private void resource(String name) throws XMLStreamException {
		xml.open("ResourceSet", "Name", name, "Usage", "Input").open("Resource");
	}

	private void closeResource() throws XMLStreamException {
		xml.close().close();
	}
}
