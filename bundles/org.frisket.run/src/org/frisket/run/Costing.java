package org.frisket.run;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.material.Price;
import org.frisket.material.Stock;
import org.frisket.material.tools.Edge;
import org.frisket.material.tools.Tool;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.Timeline;

/**
 * Works out what a run takes. A whole sheet is paid for; of a roll what is used along it; a leftover was paid for with the
 * sheet it is of. On a ganged sheet the price of the sheet is shared by the room that the parts of each job take up. The
 * time of a stroke, and of the travel to it, falls to the job whose line it is; stops, and the way home, in the same
 * proportion. Amounts are rounded half up to what the currency has, and shares sum to the whole.
 */
public final class Costing {

	private static final BigDecimal HOUR = new BigDecimal(3600);
	private static final MathContext DIGITS = new MathContext(30);
	private static final int MOST_DECIMALS = 4;

	private final MachineRun run;
	private final Load load;
	private final Map<String, String> names = new LinkedHashMap<>();
	private final Map<String, Double> areas = new LinkedHashMap<>();
	private final Map<String, Double> seconds = new LinkedHashMap<>();

	private Costing(MachineRun run, Load load) {
		this.run = run;
		this.load = load;
	}

	/**
	 * @param run  of the load
	 * @param rate of the machine's time; empty if nobody has set it
	 */
	public static RunCost of(MachineRun run, Load load, Workshop workshop, Optional<Rate> rate) {
		return new Costing(run, load).cost(workshop, rate);
	}

	private RunCost cost(Workshop workshop, Optional<Rate> rate) {
		names();
		areas();
		seconds();
		Timeline timeline = run.timeline();
		RunCost.Seconds all = new RunCost.Seconds(timeline.seconds(Timeline.Kind.STROKE),
				timeline.seconds(Timeline.Kind.TRAVEL),
				timeline.seconds(Timeline.Kind.LOWER) + timeline.seconds(Timeline.Kind.LIFT),
				timeline.seconds(Timeline.Kind.STOP));
		Optional<Price> material = load.sheet().flatMap(sheet -> price(sheet, workshop));
		Optional<Price> time = rate.map(each -> time(each, timeline.seconds()));
		return new RunCost(all, tools(), material, time, shares(material, time));
	}

	/** In the order of their first lines, those without any last. */
	private void names() {
		run.run().strokes().forEach(stroke -> name(stroke.line().job()));
		load.jobs().keySet().forEach(this::name);
	}

	/** People know a job by its number, else by its title. */
	private void name(String id) {
		Job job = load.jobs().get(id);
		String number = job == null ? null : job.getNumber();
		String name = number != null && !number.isBlank() ? number : job == null ? null : job.getTitle();
		names.putIfAbsent(id, name == null || name.isBlank() ? id : name);
	}

	private void areas() {
		names.keySet().forEach(job -> areas.put(job, 0.0));
		if (!load.rooms().isEmpty()) {
			areas.replaceAll((job, none) -> load.rooms().getOrDefault(job, 0.0));
			return;
		}
		// a job by itself on the bench
		Bounds page = load.page();
		areas.computeIfPresent(load.content().job().getId(), (job, none) -> page.width() * page.height());
	}

	private void seconds() {
		names.keySet().forEach(job -> seconds.put(job, 0.0));
		double common = 0;
		for (Timeline.Span span : run.timeline().spans()) {
			List<Stroke> strokes = run.run().legs().get(span.leg()).strokes();
			if (span.kind() == Timeline.Kind.STOP || span.stroke() >= strokes.size()) {
				common += span.seconds();
			} else {
				seconds.merge(strokes.get(span.stroke()).line().job(), span.seconds(), Double::sum);
			}
		}
		double own = seconds.values().stream().mapToDouble(each -> each).sum();
		double shared = common;
		int jobs = seconds.size();
		seconds.replaceAll((job, each) -> each + shared * (own > 0 ? each / own : 1.0 / jobs));
	}

	private List<RunCost.ToolUse> tools() {
		Map<Tool, Double> metres = new LinkedHashMap<>();
		Map<Tool, Edge> edges = new LinkedHashMap<>();
		for (int i = 0; i < run.work().size(); i++) {
			LegWork work = run.work().get(i);
			double length = run.metres(i);
			metres.merge(work.tool(), length, Double::sum);
			work.tool().edge().ifPresent(edge -> edges.put(work.tool(),
					edges.getOrDefault(work.tool(), edge).after(length, work.stock().abrasion())));
		}
		List<RunCost.ToolUse> uses = new ArrayList<>();
		metres.forEach((tool, length) -> uses.add(new RunCost.ToolUse(tool, length, Optional.ofNullable(edges.get(tool)))));
		return uses;
	}

	private static Optional<Price> price(Sheet sheet, Workshop workshop) {
		return workshop.stock(sheet.getStock()).flatMap(Stock::price).map(price -> {
			if (sheet.getLeftover() != null) {
				return new Price(BigDecimal.ZERO, price.currency());
			}
			return sheet.isRoll() ? rounded(price.amount().multiply(new BigDecimal(sheet.getWidth()).movePointLeft(3)), price.currency())
					: price;
		});
	}

	private static Price time(Rate rate, double seconds) {
		return rounded(rate.hour().amount().multiply(new BigDecimal(seconds)).divide(HOUR, DIGITS), rate.hour().currency());
	}

	private static Price rounded(BigDecimal amount, Currency currency) {
		return new Price(amount.setScale(decimals(currency), RoundingMode.HALF_UP), currency);
	}

	private static int decimals(Currency currency) {
		return Math.min(MOST_DECIMALS, Math.max(0, currency.getDefaultFractionDigits()));
	}

	private List<RunCost.Share> shares(Optional<Price> material, Optional<Price> time) {
		List<Optional<Price>> materials = parts(material, List.copyOf(areas.values()));
		List<Optional<Price>> times = parts(time, List.copyOf(seconds.values()));
		List<RunCost.Share> shares = new ArrayList<>();
		int i = 0;
		for (Map.Entry<String, String> job : names.entrySet()) {
			shares.add(new RunCost.Share(job.getKey(), job.getValue(), areas.get(job.getKey()), seconds.get(job.getKey()),
					materials.get(i), times.get(i)));
			i++;
		}
		return shares;
	}

	private static List<Optional<Price>> parts(Optional<Price> whole, List<Double> weights) {
		return whole
				.map(price -> LargestRemainder
						.part(price.amount(), Math.max(price.amount().scale(), decimals(price.currency())), weights).stream()
						.map(part -> Optional.of(new Price(part, price.currency()))).toList())
				.orElseGet(() -> weights.stream().map(weight -> Optional.<Price>empty()).toList());
	}
}
