package org.frisket.orders.paper.quote;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.frisket.run.LargestRemainder;

/**
 * Lines and sums of a quote. Prices are costs with their mark-up, rounded half up. The discount is rounded once and shared
 * among the lines in proportion to their prices, so that each rate of tax has its part of it and the shares sum to it.
 *
 * @param sum      of the lines
 * @param discount on it
 * @param net      sum less discount
 * @param taxes    by rate, the lowest first; none if nothing is taxed
 * @param total    net and taxes
 */
public record QuoteSums(List<QuoteLine> lines, BigDecimal sum, BigDecimal discount, BigDecimal net, List<TaxLine> taxes,
		BigDecimal total) {

	private static final int MOST_DECIMALS = 4;

	public QuoteSums {
		lines = List.copyOf(lines);
		taxes = List.copyOf(taxes);
	}

	public static QuoteSums of(List<CostLine> costs, Currency currency, QuoteRules rules) {
		int decimals = decimals(currency);
		List<QuoteLine> priced = priced(costs, decimals, rules);
		BigDecimal sum = sum(priced.stream().map(QuoteLine::price).toList(), decimals);
		BigDecimal discount = share(sum, rules.discount(), decimals);
		List<BigDecimal> shares = priced.isEmpty() ? List.of()
				: LargestRemainder.part(discount, decimals, priced.stream().map(line -> line.price().doubleValue()).toList());
		List<QuoteLine> lines = new ArrayList<>();
		for (int i = 0; i < priced.size(); i++) {
			lines.add(discounted(priced.get(i), shares.get(i), decimals, rules.rounding()));
		}
		List<TaxLine> taxes = taxes(lines, decimals);
		BigDecimal net = sum.subtract(discount);
		BigDecimal total = net.add(sum(taxes.stream().map(TaxLine::tax).toList(), decimals));
		return new QuoteSums(lines, sum, discount, net, taxes, total);
	}

	/** How many decimals amounts of a currency are written with. */
	static int decimals(Currency currency) {
		return Math.min(MOST_DECIMALS, Math.max(0, currency.getDefaultFractionDigits()));
	}

	/** So many % of an amount, half up. */
	private static BigDecimal share(BigDecimal of, BigDecimal percent, int decimals) {
		return of.multiply(percent).movePointLeft(2).setScale(decimals, RoundingMode.HALF_UP);
	}

	private static BigDecimal sum(List<BigDecimal> amounts, int decimals) {
		return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add).setScale(decimals, RoundingMode.UNNECESSARY);
	}

	private static List<QuoteLine> priced(List<CostLine> costs, int decimals, QuoteRules rules) {
		List<QuoteLine> lines = new ArrayList<>();
		for (CostLine cost : costs) {
			BigDecimal markUp = switch (cost.kind()) {
			case MATERIAL -> rules.material();
			case TIME -> rules.time();
			case EXTRA, MINIMUM -> BigDecimal.ZERO;
			};
			BigDecimal amount = cost.cost().setScale(decimals, RoundingMode.HALF_UP);
			lines.add(new QuoteLine(cost.kind(), cost.name(), amount, markUp, amount.add(share(amount, markUp, decimals)),
					BigDecimal.ZERO.setScale(decimals), cost.tax(), Optional.empty()));
		}
		BigDecimal lacking = rules.minimum().setScale(decimals, RoundingMode.HALF_UP)
				.subtract(sum(lines.stream().map(QuoteLine::price).toList(), decimals));
		if (lacking.signum() > 0) {
			BigDecimal none = BigDecimal.ZERO.setScale(decimals);
			lines.add(new QuoteLine(CostLine.Kind.MINIMUM, Messages.Quote_minimum, none, BigDecimal.ZERO, lacking, none,
					rules.tax(), Optional.empty()));
		}
		return lines;
	}

	private static QuoteLine discounted(QuoteLine line, BigDecimal discount, int decimals, Rounding rounding) {
		Optional<BigDecimal> tax = rounding == Rounding.LINE
				? Optional.of(share(line.price().subtract(discount), line.rate(), decimals))
				: Optional.empty();
		return new QuoteLine(line.kind(), line.name(), line.cost(), line.markUp(), line.price(), discount, line.rate(), tax);
	}

	private static List<TaxLine> taxes(List<QuoteLine> lines, int decimals) {
		Map<BigDecimal, List<QuoteLine>> byRate = new TreeMap<>();
		lines.forEach(line -> byRate.computeIfAbsent(line.rate(), rate -> new ArrayList<>()).add(line));
		if (byRate.keySet().stream().allMatch(rate -> rate.signum() == 0)) {
			return List.of();
		}
		List<TaxLine> taxes = new ArrayList<>();
		byRate.forEach((rate, taxed) -> {
			BigDecimal net = sum(taxed.stream().map(QuoteLine::net).toList(), decimals);
			boolean each = taxed.stream().allMatch(line -> line.tax().isPresent());
			taxes.add(new TaxLine(rate, net, each ? sum(taxed.stream().map(line -> line.tax().orElseThrow()).toList(), decimals)
					: share(net, rate, decimals)));
		});
		return taxes;
	}

	/** What all lines cost the studio. */
	public BigDecimal cost() {
		return lines.stream().map(QuoteLine::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
	}
}
