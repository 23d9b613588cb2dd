package org.frisket.cli.orders;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.work.Preparation;
import org.frisket.geometry.Contour;
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
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.StoredJob;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.Customers;
import org.frisket.orders.exchange.JobTicket;
import org.frisket.orders.exchange.TicketMedium;
import org.frisket.orders.exchange.TicketPart;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;

/** A job of the order book as a ticket: worked through, with its stocks and its customer. */
final class TicketMaker {

	private static final Map<OperationKind, TicketPart.Cut> CUTS = Map.of(OperationKind.CUT, TicketPart.Cut.CUT,
			OperationKind.KISS_CUT, TicketPart.Cut.KISS_CUT, OperationKind.PERFORATE, TicketPart.Cut.PERFORATE);

	private TicketMaker() {
	}

	static JobTicket ticket(StudioFolder studio, long number, List<Path> art) throws IOException, OrderException, Refusal {
		OrderBook book = new OrderBook(studio);
		StoredJob stored = book.open(number);
		Entry entry = stored.entry();
		Job job = stored.job();
		PreparedJob prepared = Preparation.of(job, Tolerance.DEFAULT).prepared();
		List<PreparedElement> shown = prepared.layers().stream().flatMap(layer -> layer.shown().stream()).toList();
		List<TicketPart> parts = new ArrayList<>();
		shown.forEach(element -> element.operations().forEach(operation -> part(element, operation).ifPresent(parts::add)));
		Optional<Customer> customer = entry.customer().isEmpty() ? Optional.empty()
				: Optional.of(new Customers(studio).find(entry.customer()));
		return new JobTicket(entry, job.getNotes() == null ? "" : job.getNotes(), book.reference(number).orElse(""), customer,
				media(studio, job), parts, art.stream().map(file -> file.toAbsolutePath().toUri()).toList(),
				shown.stream().anyMatch(element -> element.has(OperationKind.PRINT)), Instant.now(), ZoneId.systemDefault());
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

	private static List<TicketMedium> media(StudioFolder studio, Job job) throws IOException {
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
