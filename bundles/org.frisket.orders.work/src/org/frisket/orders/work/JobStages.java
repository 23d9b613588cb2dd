package org.frisket.orders.work;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.StageGate;
import org.frisket.orders.stages.StageRules;
import org.frisket.orders.work.again.MadeWith;
import org.frisket.studio.StudioFolder;

/**
 * Brings jobs of a studio to other stages, with what goes with it: of a job that is cut it is remembered what it was made
 * with. Every call opens the studio's database and may wait, so it is none for the screen's thread.
 */
public final class JobStages {

	/**
	 * A job that was brought to a stage.
	 *
	 * @param entry as it is now
	 * @param notes what could not be done besides, a sentence each
	 */
	public record Moved(Entry entry, List<String> notes) {

		public Moved {
			notes = List.copyOf(notes);
		}
	}

	private final StudioFolder studio;
	private final OrderBook book;

	public JobStages(StudioFolder studio) {
		this(studio, Clock.systemUTC());
	}

	/** @param clock tells the time of changes */
	public JobStages(StudioFolder studio, Clock clock) {
		this.studio = studio;
		book = new OrderBook(studio, clock);
	}

	/**
	 * Brings a job to another stage if no rule of the studio is against it.
	 *
	 * @param remark   why, or empty
	 * @param blocking asked only if a rule wants to know: the blocking findings of the job as it is kept
	 * @throws org.frisket.orders.stages.StageRuleException if a rule is against it
	 * @throws OrderException                               if it is there already, or was changed meanwhile
	 */
	public Moved move(long number, Stage to, String person, String remark, Supplier<List<String>> blocking)
			throws IOException, OrderException {
		return move(number, to, person, remark, new StageRules(studio).gate(blocking));
	}

	/** The same, whatever the studio's rules say. */
	public Moved moveAnyway(long number, Stage to, String person, String remark) throws IOException, OrderException {
		return move(number, to, person, remark, step -> {
			// nobody is asked
		});
	}

	private Moved move(long number, Stage to, String person, String remark, StageGate gate) throws IOException, OrderException {
		// a job that is brought from approved to finished at once was cut too
		List<Boolean> cut = new ArrayList<>();
		Entry entry = book.stage(number, to, person, remark, step -> {
			gate.pass(step);
			cut.add(step.reaches(Stage.CUT));
		});
		return new Moved(entry, cut.contains(true) ? remember(studio, number).stream().toList() : List.of());
	}

	/** Goes back to the stage before the last change. What was remembered stays until the job is cut again. */
	public Entry undo(long number, String person) throws IOException, OrderException {
		return book.undoStage(number, person);
	}

	/** The same, but only if it is still the change by which the job came to its stage at a certain time. */
	public Entry undo(long number, Instant since, String person) throws IOException, OrderException {
		return book.undoStage(number, since, person);
	}

	/** @return why it could not be remembered; the job is cut all the same */
	static Optional<String> remember(StudioFolder studio, long number) {
		try {
			MadeWith.keep(studio, number);
			return Optional.empty();
		} catch (IOException | OrderException e) {
			return Optional.of(NLS.bind(Messages.JobStages_forgotten, number, e.getMessage()));
		}
	}
}
