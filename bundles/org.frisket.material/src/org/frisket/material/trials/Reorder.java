package org.frisket.material.trials;

import java.time.ZoneOffset;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.eclipse.osgi.util.NLS;

/**
 * What worked before, for a job that is made again.
 *
 * @param run   that went well
 * @param words why it is proposed, and what speaks against it; in the user's language
 */
public record Reorder(Run run, List<String> words) {

	private static final Comparator<Run> NEWEST = Comparator.comparing(Run::at).thenComparing(Run::id).reversed();

	public Reorder {
		words = List.copyOf(words);
	}

	/**
	 * The latest run that went well with this setup: of the same job and stock, else of the stock, else of the job.
	 * Settings that have failed since give way to others that have not.
	 *
	 * @param job   id of the job that is made again
	 * @param stock id of the stock it is made of
	 */
	public static Optional<Reorder> of(Collection<Run> runs, String job, String stock, Setup setup) {
		List<Run> comparable = runs.stream().filter(run -> run.setup().equals(setup)).sorted(NEWEST).toList();
		Predicate<Run> sameJob = run -> run.job().equals(job);
		Predicate<Run> sameStock = run -> run.stock().stock().equals(stock);
		return best(comparable, sameJob.and(sameStock), Messages.Reorder_sameJob)
				.or(() -> best(comparable, sameStock, Messages.Reorder_sameStock))
				.or(() -> best(comparable, sameJob, Messages.Reorder_otherStock));
	}

	private static Optional<Reorder> best(List<Run> runs, Predicate<Run> fits, String words) {
		List<Run> good = runs.stream().filter(fits).filter(run -> run.verdict().isGood()).toList();
		Optional<Run> unspoilt = good.stream().filter(run -> failures(runs, run) == 0).findFirst();
		return unspoilt.or(() -> good.stream().findFirst()).map(run -> {
			String why = NLS.bind(words, run.at().atZone(ZoneOffset.UTC).toLocalDate());
			long failures = failures(runs, run);
			return new Reorder(run, failures == 0 ? List.of(why)
					: List.of(why, NLS.bind(Messages.Reorder_since, failures)));
		});
	}

	/** How often the same settings failed in the same stock after a run. */
	private static long failures(List<Run> runs, Run run) {
		return runs.stream().filter(other -> other.at().isAfter(run.at()) && !other.verdict().isGood()
				&& other.settings().equals(run.settings()) && other.stock().stock().equals(run.stock().stock())).count();
	}
}
