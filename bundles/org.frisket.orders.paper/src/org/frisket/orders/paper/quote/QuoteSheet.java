package org.frisket.orders.paper.quote;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

import org.frisket.model.Job;
import org.frisket.orders.paper.JobWork;
import org.frisket.run.Rate;

/**
 * A quote as values: what its papers say.
 *
 * @param date       of it; empty if none was said
 * @param validUntil the last day on which it holds; empty if none was said
 * @param gaps       what is not in it since nobody knows its price, a sentence each; one that has any is a draft
 */
public record QuoteSheet(String job, String number, String title, String customer, int quantity, Currency currency,
		QuoteSums sums, Rounding rounding, Optional<LocalDate> date, Optional<LocalDate> validUntil, List<String> gaps) {

	public QuoteSheet {
		gaps = List.copyOf(gaps);
	}

	/**
	 * @param rate of the machine's time, by which the work was worked out; empty if nobody has set it
	 * @param date of the quote; empty for none said
	 * @throws IllegalArgumentException if prices are not in one currency, or nothing says in which, with the reason in the
	 *                                  user's language
	 */
	public static QuoteSheet of(JobWork work, Optional<Rate> rate, QuoteRules rules, Optional<LocalDate> date) {
		Costs costs = Costs.of(work, rate, rules);
		Job job = work.job();
		return new QuoteSheet(job.getId(), text(job.getNumber()), text(job.getTitle()), text(job.getCustomer()),
				job.getQuantity(), costs.currency(), QuoteSums.of(costs.lines(), costs.currency(), rules), rules.rounding(), date,
				date.filter(day -> rules.validDays() > 0).map(day -> day.plusDays(rules.validDays())), costs.gaps());
	}

	private static String text(String text) {
		return text == null ? "" : text.strip();
	}

	/** Whether prices are missing, so that nobody should be sent it. */
	public boolean isDraft() {
		return !gaps.isEmpty();
	}
}
