package org.frisket.material.advice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.frisket.material.StockFamily;
import org.frisket.material.tools.NativeScale;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Setup;
import org.frisket.material.trials.Trial;

/**
 * Advises settings from the trials there are, and from rules of thumb where there are none.
 *
 * <p>Only trials of the same family, machine, tool, operation and number of passes are compared. What is taken for
 * granted is that heavier (or thicker) stock never needs less pressure, and that more pressure never cuts less deep; see
 * {@link DepthFit}. Trials with a dull edge are left out, since they tell of the edge, as are torn ones, which tell
 * nothing of depth. All others weigh the same: a stock does not change with the years, so an old verdict is as good as
 * one of today. The order of trials does not matter.
 *
 * <p>The pressure advised is the middle of the window from the least that comes through to the greatest that spares the
 * carrier, or the least that comes through if there is no window; for one number of passes it never falls as stock gets
 * heavier. The number of passes is the least that leaves a window. Exposure and speed are the middle of what went well in
 * the nearest stock.
 *
 * <p>The fits are made at once and kept: asking is cheap. Safe for use by several threads.
 */
public final class SettingsAdvisor {

	private record Group(StockFamily family, Setup setup, Measure measure) {
	}

	/** @param trials of a group, by passes; @param dull and @param torn how many were left out */
	private static final class Evidence {
		private final TreeMap<Integer, List<Trial>> trials = new TreeMap<>();
		private final Map<Integer, FamilyFit> fits = new HashMap<>();
		private int dull;
		private int torn;

		void add(Trial trial) {
			if (trial.isDull()) {
				dull++;
			} else if (!trial.verdict().tellsDepth()) {
				torn++;
			} else {
				trials.computeIfAbsent(trial.settings().passes(), passes -> new ArrayList<>()).add(trial);
			}
		}

		/** The step of the machine is not known before somebody asks. */
		synchronized FamilyFit fit(int passes, Measure measure, double step) {
			return fits.computeIfAbsent(passes, key -> new FamilyFit(trials.get(key), measure, step));
		}
	}

	private final Map<Group, Evidence> evidence = new HashMap<>();
	private final RulesOfThumb rules;

	public SettingsAdvisor(Collection<Trial> trials, RulesOfThumb rules) {
		this.rules = rules;
		for (Trial trial : trials) {
			for (Measure measure : Measure.values()) {
				if (measure.value(trial.stock()) > 0) {
					evidence.computeIfAbsent(new Group(trial.stock().family(), trial.setup(), measure),
							group -> new Evidence()).add(trial);
				}
			}
		}
	}

	/** What to begin with. */
	public Advice advise(Work work) {
		Rules byRule = new Rules(rules, work);
		List<Caution> cautions = Cautions.of(work.stock().family(), work.machine(), work.tool(), work.operation());
		Optional<Measure> measure = Measure.of(work.stock());
		Evidence found = measure.map(each -> evidence.get(new Group(work.stock().family(), work.setup(), each)))
				.orElse(null);
		if (found == null || found.trials.isEmpty()) {
			List<String> reasons = byRule.reasons();
			if (found != null) {
				reasons.add(Findings.leftOut(found.dull, found.torn));
			}
			return new Advice(byRule.settings(), Confidence.RULE_OF_THUMB, null, 0, false, reasons, cautions);
		}
		return fromTrials(work, measure.get(), found, byRule, cautions);
	}

	private static Advice fromTrials(Work work, Measure measure, Evidence found, Rules byRule,
			List<Caution> cautions) {
		double value = measure.value(work.stock());
		NativeScale scale = work.machine().pressure();
		int passes = passes(found, measure, value, scale);
		FamilyFit fit = found.fit(passes, measure, scale.step());
		DepthFit.Band from = fit.through().at(value);
		DepthFit.Band to = fit.carrier().at(value);
		Advice.PressureWindow window = new Advice.PressureWindow(from.pressure(), from.least(), from.most(),
				to.pressure(), to.least(), to.most());
		double pressure = Math.max(scale.atLeast(from.pressure()),
				scale.nearest((from.pressure() + to.pressure()) / 2));
		boolean outside = !fit.through().covers(value);
		Findings findings = new Findings(measure, value, fit, passes, window, pressure);
		List<String> reasons = findings.reasons();
		if (found.dull + found.torn > 0) {
			reasons.add(Findings.leftOut(found.dull, found.torn));
		}
		FamilyFit.Usual usual = fit.usual(value);
		if (usual == null) {
			reasons.add(Messages.SettingsAdvisor_nothingGood);
			byRule.exposureReason(reasons);
		}
		Settings rule = byRule.settings();
		Settings settings = new Settings(usual == null ? rule.exposure() : usual.exposure(), pressure,
				usual == null ? rule.speed() : work.machine().speed().nearest(usual.speed()), passes);
		return new Advice(settings, confidence(fit, value, window, pressure, scale), window, fit.through().tries(),
				outside, reasons, cautions);
	}

	/** The fewest that leave a window the machine can reach; else as many as were tried most. */
	private static int passes(Evidence found, Measure measure, double value, NativeScale scale) {
		for (int passes : found.trials.keySet()) {
			FamilyFit fit = found.fit(passes, measure, scale.step());
			if (fit.through().covers(value) && fit.isOpen(value) && fit.through().pressure(value) <= scale.most()) {
				return passes;
			}
		}
		return found.trials.entrySet().stream()
				.max(Map.Entry.<Integer, List<Trial>>comparingByValue((a, b) -> a.size() - b.size())
						.thenComparing(Map.Entry.<Integer, List<Trial>>comparingByKey().reversed()))
				.orElseThrow().getKey();
	}

	private static Confidence confidence(FamilyFit fit, double value, Advice.PressureWindow window, double pressure,
			NativeScale scale) {
		if (!fit.through().covers(value) || !window.isOpen() || window.from() > scale.most()) {
			return Confidence.LOW;
		}
		return pressure >= window.fromMost() && pressure <= window.toLeast() ? Confidence.GOOD : Confidence.FAIR;
	}
}
