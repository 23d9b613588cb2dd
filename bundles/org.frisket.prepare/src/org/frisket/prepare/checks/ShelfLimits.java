package org.frisket.prepare.checks;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.Caliper;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockShelf;
import org.frisket.material.sizes.Format;
import org.frisket.prepare.Figures;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;

/**
 * Limits of the stock on the studio's shelf, by its caliper as {@link FamilyLimits} has it, and the sizes it comes in.
 * The shelf as it was read last is kept for all; it is read again once the store's revision is another.
 */
final class ShelfLimits implements StockLimits {

	/** For whoever cannot wait: another process mostly has the store open for much less. */
	static final Duration SHORT_WAIT = Duration.ofMillis(500);
	/** A store that could not be read is not tried again at every key. */
	private static final Duration PAUSE = Duration.ofSeconds(10);

	private static volatile Read last = new Read(null, "", new ShelfLimits(Map.of(), List.of()), 0);
	private static final AtomicBoolean READING = new AtomicBoolean();

	/** @param folder none at first @param failed by the clock of {@link System#nanoTime}; 0 if it did not */
	private record Read(Path folder, String revision, ShelfLimits limits, long failed) {

		boolean isOf(StudioFolder studio) {
			return studio.path().equals(folder);
		}

		boolean isCurrent(StudioFolder studio) {
			return isOf(studio) && revision.equals(Store.revision(studio))
					&& (failed == 0 || System.nanoTime() - failed < PAUSE.toNanos());
		}
	}

	/** What is needed of a stock. */
	private record Known(String name, Caliper caliper, Limits limits, List<SheetSize> sheets) {
	}

	private final Map<String, Known> known;
	private final List<String> problems;

	private ShelfLimits(Map<String, Known> known, List<String> problems) {
		this.known = known;
		this.problems = problems;
	}

	/** As the shelf is now. @param patience for another process that has the store open */
	static ShelfLimits of(StudioFolder studio, Duration patience) {
		Read read = last;
		if (!read.isCurrent(studio)) {
			synchronized (ShelfLimits.class) {
				read = last;
				if (!read.isCurrent(studio)) {
					read = read(studio, patience, read);
					last = read;
				}
			}
		}
		return read.limits();
	}

	/** As the shelf was when it was read last; it is read again meanwhile if it has changed. */
	static ShelfLimits remembered(StudioFolder studio) {
		Read read = last;
		if (!read.isCurrent(studio) && READING.compareAndSet(false, true)) {
			Thread reader = new Thread(() -> {
				try {
					of(studio, SHORT_WAIT);
				} finally {
					READING.set(false);
				}
			}, "Frisket stock limits");
			reader.setDaemon(true);
			reader.start();
		}
		return read.isOf(studio) ? read.limits() : new ShelfLimits(Map.of(), List.of());
	}

	private static Read read(StudioFolder studio, Duration patience, Read before) {
		// before the store is opened: a change in between is then seen at the next question
		String revision = Store.revision(studio);
		if (revision.isEmpty()) {
			return new Read(studio.path(), revision, new ShelfLimits(Map.of(), List.of()), 0);
		}
		try (Store store = Store.openForReading(studio, patience, StockShelf.AREA)) {
			Map<String, Known> known = new LinkedHashMap<>();
			for (ShelvedStock shelved : new StockShelf(store).list()) {
				Stock stock = shelved.stock();
				// without any measure no stock is taken on the shelf
				stock.caliper().ifPresent(caliper -> known.put(stock.id(), known(stock, caliper)));
			}
			return new Read(studio.path(), revision, new ShelfLimits(known, List.of()), 0);
		} catch (IOException | RuntimeException failed) {
			String problem = NLS.bind(Messages.ShelfLimits_unreadable, failed.getMessage());
			return new Read(studio.path(), revision,
					new ShelfLimits(before.isOf(studio) ? before.limits().known : Map.of(), List.of(problem)),
					Math.max(1, System.nanoTime()));
		}
	}

	private static Known known(Stock stock, Caliper caliper) {
		return new Known(stock.name(), caliper,
				FamilyLimits.ofCaliper(stock.family(), caliper.thickness().mm().doubleValue()),
				stock.sizes().stream().map(ShelfLimits::size).distinct().toList());
	}

	private static SheetSize size(Format format) {
		if (format instanceof Format.Roll roll) {
			return SheetSize.of(roll.width().doubleValue(),
					roll.length().map(BigDecimal::doubleValue).orElse(Double.POSITIVE_INFINITY));
		}
		return SheetSize.of(format.width().doubleValue(), ((Format.Sheet) format).height().doubleValue());
	}

	@Override
	public Optional<Limits> limits(String stock) {
		return Optional.ofNullable(known.get(stock)).map(Known::limits);
	}

	@Override
	public List<String> stocks() {
		return List.copyOf(known.keySet());
	}

	@Override
	public List<SheetSize> sheets(String stock) {
		return Optional.ofNullable(known.get(stock)).map(Known::sheets).orElse(List.of());
	}

	@Override
	public Optional<String> basis(String stock) {
		return Optional.ofNullable(known.get(stock)).map(each -> {
			boolean measured = each.caliper().source() == Caliper.Source.MEASURED;
			return NLS.bind(measured ? Messages.ShelfLimits_measured : Messages.ShelfLimits_estimated, each.name(),
					Figures.length(each.caliper().thickness().mm().doubleValue(), 3));
		});
	}

	@Override
	public List<String> problems() {
		return problems;
	}
}
