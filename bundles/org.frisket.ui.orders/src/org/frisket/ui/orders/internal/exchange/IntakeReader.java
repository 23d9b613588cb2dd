package org.frisket.ui.orders.internal.exchange;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.jobs.Job;
import org.frisket.orders.intake.OrderFile;
import org.frisket.orders.intake.OrderIntake;
import org.frisket.orders.intake.OrderMapping;
import org.frisket.orders.intake.OrderReading;
import org.frisket.orders.intake.RememberedMappings;
import org.frisket.studio.Studio;
import org.frisket.ui.studio.StoreJob;

/** Reads a table off the UI thread, as often as somebody wants it read otherwise; what is asked last is told. */
final class IntakeReader {

	/**
	 * What was read.
	 *
	 * @param names   of mappings that are remembered
	 * @param recalled by which it was read; empty if by none of them
	 */
	record Sight(OrderReading reading, List<String> names, Optional<String> recalled) {
	}

	private final Path path;
	private final Consumer<Sight> seen;
	private final Consumer<String> refused;
	/** Only touched by the jobs, which come one after the other. */
	private OrderFile file;
	private int asked;
	private Job last;

	IntakeReader(Path path, Consumer<Sight> seen, Consumer<String> refused) {
		this.path = path;
		this.seen = seen;
		this.refused = refused;
	}

	/** As it stands there for the first time: by a remembered mapping if one fits, else by its titles. */
	void first() {
		ask(() -> {
			OrderReading guessed = read(OrderMapping.GUESSED, true);
			Optional<String> fitting = remembered().fitting(guessed.head());
			return new Sight(fitting.isPresent() ? read(remembered().recall(fitting.get()).orElseThrow(), true) : guessed,
					remembered().names(), fitting);
		});
	}

	void by(OrderMapping mapping, boolean skipKnown) {
		ask(() -> new Sight(read(mapping, skipKnown), remembered().names(), Optional.empty()));
	}

	void recalled(String name, boolean skipKnown) {
		ask(() -> new Sight(read(remembered().recall(name).orElse(OrderMapping.GUESSED), skipKnown), remembered().names(),
				Optional.of(name)));
	}

	private static RememberedMappings remembered() {
		return new RememberedMappings(Studio.folder());
	}

	private OrderReading read(OrderMapping mapping, boolean skipKnown) throws Exception {
		if (file == null) {
			file = OrderFile.of(path);
		}
		return new OrderIntake(Studio.folder()).read(file.bytes(), mapping, skipKnown);
	}

	private void ask(StoreJob.Task<Sight> task) {
		int mine = ++asked;
		if (last != null) {
			last.cancel();
		}
		last = new StoreJob<>(Messages.IntakeReader_reading, task, sight -> {
			if (mine == asked) {
				seen.accept(sight);
			}
		}, reason -> {
			if (mine == asked) {
				refused.accept(reason);
			}
		});
		last.schedule();
	}
}
