package org.frisket.orders.paper.quote;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.Price;
import org.frisket.model.Sheet;
import org.frisket.orders.paper.JobWork;
import org.frisket.orders.paper.SheetWork;
import org.frisket.page.flow.Figures;
import org.frisket.run.Rate;
import org.frisket.run.RunCost;

/**
 * What a job costs the studio: its share of the sheets it lies on, and of the time of their runs, setting up, and extras.
 *
 * @param gaps what is not in it since nobody knows its price, a sentence each
 */
public record Costs(Currency currency, List<CostLine> lines, List<String> gaps) {

	private static final BigDecimal HOUR = new BigDecimal(3600);
	private static final BigDecimal MINUTES = new BigDecimal(60);
	private static final MathContext DIGITS = new MathContext(30);
	private static final double MM_PER_METRE = 1000;

	public Costs {
		lines = List.copyOf(lines);
		gaps = List.copyOf(gaps);
	}

	/** Sheets of one stock. */
	private static final class OfStock {
		private int sheets;
		private double metres;
		private boolean shared;
		private BigDecimal amount = BigDecimal.ZERO;
	}

	/**
	 * @param rate of the machine's time, by which the work was worked out; empty if nobody has set it
	 * @throws IllegalArgumentException if prices are not in one currency, or nothing says in which, with the reason in the
	 *                                  user's language
	 */
	public static Costs of(JobWork work, Optional<Rate> rate, QuoteRules rules) {
		return new Gathering(work, rate, rules).costs();
	}

	private static final class Gathering {

		private final JobWork work;
		private final Optional<Rate> rate;
		private final QuoteRules rules;
		private final List<CostLine> lines = new ArrayList<>();
		private final Set<String> gaps = new LinkedHashSet<>();
		private Currency currency;

		Gathering(JobWork work, Optional<Rate> rate, QuoteRules rules) {
			this.work = work;
			this.rate = rate;
			this.rules = rules;
			currency = rules.currency().orElse(null);
		}

		Costs costs() {
			material();
			double seconds = seconds();
			boolean worked = seconds > 0 || rules.setUp().signum() > 0;
			if (worked && rate.isEmpty()) {
				gaps.add(Messages.Costs_noRate);
			} else if (worked) {
				check(rate.get().hour(), Messages.Costs_rate);
				time(seconds);
			}
			rules.extras().forEach(extra -> lines.add(new CostLine(CostLine.Kind.EXTRA, extra.name(), extra.amount(),
					extra.tax().orElse(rules.tax()))));
			if (currency == null) {
				throw new IllegalArgumentException(Messages.Costs_noCurrency);
			}
			int decimals = QuoteSums.decimals(currency);
			return new Costs(currency, lines.stream().map(line -> new CostLine(line.kind(), line.name(),
					line.cost().setScale(decimals, RoundingMode.HALF_UP), line.tax())).toList(), List.copyOf(gaps));
		}

		/** The first price says in which currency all are. */
		private void check(Price price, String what) {
			if (currency == null) {
				currency = price.currency();
			} else if (!currency.equals(price.currency())) {
				throw new IllegalArgumentException(NLS.bind(Messages.Costs_currencies, new Object[] { what,
						price.currency().getCurrencyCode(), currency.getCurrencyCode() }));
			}
		}

		private void material() {
			if (work.parts().isEmpty()) {
				gaps.add(Messages.Costs_nothing);
			} else if (!work.isLaid()) {
				gaps.add(Messages.Costs_notLaid);
			}
			Map<String, OfStock> stocks = new LinkedHashMap<>();
			for (SheetWork each : work.sheets()) {
				Optional<Sheet> sheet = each.load().sheet();
				Optional<RunCost.Share> share = each.share(work.job().getId());
				if (sheet.isEmpty() || share.isEmpty()) {
					continue;
				}
				String name = work.stockName(sheet.get().getStock());
				if (share.get().material().isEmpty()) {
					gaps.add(NLS.bind(Messages.Costs_noPrice, name));
					continue;
				}
				Price price = share.get().material().get();
				check(price, name);
				OfStock stock = stocks.computeIfAbsent(name, key -> new OfStock());
				stock.sheets++;
				stock.metres += sheet.get().isRoll() ? sheet.get().getWidth() / MM_PER_METRE : 0;
				stock.shared |= each.isShared();
				stock.amount = stock.amount.add(price.amount());
			}
			stocks.forEach((name, stock) -> lines.add(new CostLine(CostLine.Kind.MATERIAL, said(name, stock), stock.amount,
					rules.tax())));
		}

		private static String said(String name, OfStock stock) {
			if (stock.metres > 0) {
				return NLS.bind(stock.shared ? Messages.Costs_shareOfRoll : Messages.Costs_roll, name,
						Figures.metres(stock.metres));
			}
			return NLS.bind(stock.shared ? Messages.Costs_shareOfSheets : Messages.Costs_sheets, name, stock.sheets);
		}

		/** Of its lines; what lies on the bench is run once for each copy. */
		private double seconds() {
			double seconds = work.sheets().stream().mapToDouble(sheet -> sheet.share(work.job().getId())
					.map(RunCost.Share::seconds).orElse(0.0)).sum();
			return work.isLaid() ? seconds : seconds * work.job().getQuantity();
		}

		private void time(double seconds) {
			BigDecimal hour = rate.orElseThrow().hour().amount();
			if (seconds > 0) {
				lines.add(new CostLine(CostLine.Kind.TIME, NLS.bind(Messages.Costs_time, Figures.time(seconds)),
						hour.multiply(new BigDecimal(seconds)).divide(HOUR, DIGITS), rules.tax()));
			}
			if (rules.setUp().signum() > 0) {
				lines.add(new CostLine(CostLine.Kind.TIME,
						NLS.bind(Messages.Costs_setUp, Figures.number(rules.setUp().doubleValue(), 2)),
						hour.multiply(rules.setUp()).divide(MINUTES, DIGITS), rules.tax()));
			}
		}
	}
}
