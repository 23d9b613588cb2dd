package org.frisket.run;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.frisket.material.advice.Advice;
import org.frisket.material.advice.Caution;
import org.frisket.material.advice.Confidence;
import org.frisket.material.advice.SettingsAdvisor;
import org.frisket.material.advice.Work;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.Reorder;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.StockFacts;
import org.frisket.model.OperationKind;

/**
 * Settings for a piece of work: those of a run of the same stock that went well, the same job's first; else what trials
 * say; else those of a run of the same job in another stock; else rules of thumb. Nothing reaches from one family of stock
 * to another.
 */
final class SettingsChoice {

	private static final String WEAR = "blade.wear";

	private final Workshop workshop;
	private final SettingsAdvisor advisor;

	SettingsChoice(Workshop workshop) {
		this.workshop = workshop;
		advisor = workshop.desk().advisor(workshop.desk().trials());
	}

	/** @param stock its id, may be null @param jobs ids of all on the sheet, that whose sheet it is first */
	LegWork choose(OperationKind kind, Tool tool, String stock, List<String> jobs) {
		StockFacts facts = workshop.facts(stock);
		Work work = new Work(facts, workshop.machine(), tool, kind);
		Advice advice = advisor.advise(work);
		// whether the edge lasts for this run is a finding, which knows the metres that lie ahead
		List<Caution> cautions = advice.cautions().stream().filter(caution -> !caution.id().equals(WEAR)).toList();
		boolean tried = advice.confidence() != Confidence.RULE_OF_THUMB;
		Predicate<Run> sameStock = run -> !facts.stock().isEmpty() && run.stock().stock().equals(facts.stock());
		Optional<Reorder> proven = proven(work, jobs, sameStock.and(run -> jobs.contains(run.job())))
				.or(() -> proven(work, jobs, sameStock))
				.or(() -> tried ? Optional.empty() : proven(work, jobs, run -> jobs.contains(run.job())));
		return proven
				.map(before -> new LegWork(tool, facts, LegWork.Basis.RUN, before.run().settings(), before.words(),
						cautions))
				.orElseGet(() -> new LegWork(tool, facts, tried ? LegWork.Basis.TRIALS : LegWork.Basis.RULES,
						advice.settings(), advice.reasons(), cautions));
	}

	private Optional<Reorder> proven(Work work, List<String> jobs, Predicate<Run> fits) {
		List<Run> runs = workshop.desk().runs().stream().filter(run -> run.stock().family() == work.stock().family())
				.filter(fits).toList();
		return jobs.stream().flatMap(job -> Reorder.of(runs, job, work.stock().stock(), work.setup()).stream()).findFirst();
	}
}
