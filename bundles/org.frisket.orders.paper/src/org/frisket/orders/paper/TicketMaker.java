package org.frisket.orders.paper;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Tolerance;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.StockShelf;
import org.frisket.model.Job;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Sheet;
import org.frisket.model.WholeFile;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.StoredJob;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.Customers;
import org.frisket.orders.exchange.JobTicket;
import org.frisket.orders.exchange.TicketMedium;
import org.frisket.orders.exchange.TicketPart;
import org.frisket.orders.exchange.XjdfWriter;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;

/** Jobs of a studio's order book as tickets for other systems: worked through, with their stocks and their customers. */
public final class TicketMaker {

	private static final Map<OperationKind, TicketPart.Cut> CUTS = Map.of(OperationKind.CUT, TicketPart.Cut.CUT,
			OperationKind.KISS_CUT, TicketPart.Cut.KISS_CUT, OperationKind.PERFORATE, TicketPart.Cut.PERFORATE);

	private final StudioFolder studio;
	private final JobPreparer preparer;
	private final Clock clock;

	/** @param clock tells when a ticket is made, and by which calendar the day a job is due is a day */
	public TicketMaker(StudioFolder studio, JobPreparer preparer, Clock clock) {
		this.studio = studio;
		this.preparer = preparer;
		this.clock = clock;
	}

	/**
	 * Writes a ticket: the whole file, or none.
	 *
	 * @param art files with what is printed
	 * @throws IllegalArgumentException                   if the job cannot be worked through; the message is for people
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public void write(long number, List<Path> art, Path file, Monitor monitor) throws IOException, OrderException {
		byte[] xml = XjdfWriter.toBytes(ticket(number, art, monitor));
		WholeFile.write(out -> out.write(xml), file);
	}

	JobTicket ticket(long number, List<Path> art, Monitor monitor) throws IOException, OrderException {
		OrderBook book = new OrderBook(studio);
		StoredJob stored = book.open(number);
		Entry entry = stored.entry();
		Job job = stored.job();
		PreparedJob prepared = preparer.prepare(job, Tolerance.DEFAULT, monitor);
		List<PreparedElement> shown = prepared.layers().stream().flatMap(layer -> layer.shown().stream()).toList();
		List<TicketPart> parts = new ArrayList<>();
		shown.forEach(element -> element.operations().forEach(operation -> part(element, operation).ifPresent(parts::add)));
		Optional<Customer> customer = entry.customer().isEmpty() ? Optional.empty()
				: Optional.of(new Customers(studio).find(entry.customer()));
		return new JobTicket(entry, job.getNotes() == null ? "" : job.getNotes(), book.reference(number).orElse(""), customer,
				media(job), parts, art.stream().map(file -> file.toAbsolutePath().toUri()).toList(),
				shown.stream().anyMatch(element -> element.has(OperationKind.PRINT)), clock.instant(), clock.getZone());
	}

	private static Optional<TicketPart> part(PreparedElement element, Operation operation) {
		TicketPart.Cut cut = CUTS.get(operation.getKind());
		List<Contour> contours = new ArrayList<>(element.region().contours());
		contours.addAll(element.lines());
		if (cut == null || contours.isEmpty()) {
			return Optional.empty();
		}
		String name = element.element().getName();
		return Optional.of(new TicketPart(name == null ? element.element().getId() : name, cut, new Outline(contours)));
	}

	private List<TicketMedium> media(Job job) throws IOException {
		Set<String> ids = new LinkedHashSet<>();
		job.getLayers().stream().map(layer -> layer.getStock()).filter(id -> id != null && !id.isBlank()).forEach(ids::add);
		List<TicketMedium> media = new ArrayList<>();
		try (Store store = Store.openForReading(studio, StockShelf.AREA)) {
			StockShelf shelf = new StockShelf(store);
			for (String id : ids) {
				Optional<Sheet> sheet = job.getSheets().stream()
						.filter(each -> id.equals(each.getStock()) && each.getWidth() > 0 && each.getHeight() > 0).findFirst();
				OptionalDouble width = sheet.map(each -> OptionalDouble.of(each.getWidth())).orElse(OptionalDouble.empty());
				OptionalDouble height = sheet.map(each -> OptionalDouble.of(each.getHeight())).orElse(OptionalDouble.empty());
				Optional<Stock> stock = shelf.find(id).map(ShelvedStock::stock);
				media.add(new TicketMedium(stock.map(Stock::name).orElse(id), stock.map(TicketMaker::kind)
						.orElse(TicketMedium.Kind.PAPER), width, height, value(stock.flatMap(Stock::grammage)),
						value(stock.flatMap(Stock::caliper).map(caliper -> caliper.thickness().mm()))));
			}
		}
		return media;
	}

	private static OptionalDouble value(Optional<BigDecimal> value) {
		return value.filter(number -> number.signum() > 0).map(number -> OptionalDouble.of(number.doubleValue()))
				.orElse(OptionalDouble.empty());
	}

	/** XJDF has no kind for every family: what is thick and made of fibres is paper to it. */
	private static TicketMedium.Kind kind(Stock stock) {
		StockFamily family = stock.family();
		return switch (family) {
		case LABEL -> TicketMedium.Kind.SELF_ADHESIVE;
		case FILM, FOAM -> TicketMedium.Kind.FILM;
		case FABRIC -> TicketMedium.Kind.TEXTILE;
		default -> TicketMedium.Kind.PAPER;
		};
	}
}
