package org.frisket.orders.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.OptionValues;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.model.Job;
import org.frisket.model.WholeFile;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.Paper;
import org.frisket.orders.PaperKind;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.run.Rate;
import org.frisket.run.RunOptions;
import org.frisket.run.Workshop;
import org.frisket.sheets.GuestFiles;
import org.frisket.studio.StudioFolder;

/**
 * The papers of the jobs in a studio's order book: worked out, written, and noted as handed out. Screen and command line
 * come by here. Calls may take their time.
 */
public final class BookPapers {

	/** Stands for the file of a job of the order book, beside which its guests would be. */
	private static final String PLACE = "order-book.frjob";

	private final StudioFolder studio;
	private final JobPreparer preparer;
	private final LayerLimits limits;

	/** What writes a paper. */
	@FunctionalInterface
	public interface Writing {
		void to(OutputStream out) throws IOException;
	}

	/** @param limits of the stocks of layers */
	public BookPapers(StudioFolder studio, JobPreparer preparer, LayerLimits limits) {
		this.studio = studio;
		this.preparer = preparer;
		this.limits = limits;
	}

	/**
	 * How papers are worked out if nobody says otherwise: for the machine most likely meant, at the studio's rate.
	 *
	 * @throws IOException              if the studio's store or its preferences cannot be read
	 * @throws IllegalArgumentException if its preferences say a rate that is none
	 */
	public JobWork.Means means() throws IOException {
		return means(Workshop.of(SettingsDesk.look(studio)), Rate.of(studio), Tolerance.DEFAULT);
	}

	/** @param rate of the machine's time; empty if nobody has set it */
	public JobWork.Means means(Workshop workshop, Optional<Rate> rate, Tolerance tolerance) {
		return new JobWork.Means(preparer, limits, workshop,
				RunOptions.choices(OptionValues.defaults(RunOptions.options(workshop))), rate, tolerance);
	}

	/**
	 * A job of the order book worked through as far as it goes. Paths of its guests are whole, or as seen from the studio's
	 * folder.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public JobWork work(Job job, JobWork.Means means, Monitor monitor) {
		return JobWork.of(job, GuestFiles.load(job, studio.path().resolve(PLACE)), means, monitor);
	}

	/** The blocking findings of makeready about a job as it is kept, as rules of stages ask for them. */
	public List<String> blocking(long number) {
		try {
			Job job = new OrderBook(studio).open(number).job();
			return Makeready
					.findings(preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE), limits, Tolerance.DEFAULT, Monitor.NONE)
					.stream().filter(Finding::isBlocking).map(Finding::message).toList();
		} catch (IOException | OrderException | IllegalArgumentException e) {
			// what cannot be worked out cannot be cut either
			return List.of(String.valueOf(e.getMessage()));
		}
	}

	/** Writes a paper: the whole file, or none. @throws IOException with the file named if it cannot be */
	public static void write(Writing writing, Path file) throws IOException {
		WholeFile.write(writing::to, file);
	}

	/** Notes that a paper was handed out; call it once its file is there. @param person who handed it out */
	public Paper note(long number, PaperKind kind, Path file, String person) throws IOException, OrderException {
		return new OrderBook(studio).handedOut(number, kind, person, String.valueOf(file.getFileName()));
	}
}
