package org.frisket.run;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.frisket.material.Price;
import org.frisket.material.tools.Edge;
import org.frisket.material.tools.Tool;

/**
 * What the run of a sheet takes: time, cutting edges, stock and money. All of it is an estimate.
 *
 * @param seconds  of the run
 * @param tools    what each does, in the order in which they come
 * @param material the price of the whole sheet; empty if nobody knows it
 * @param time     the price of the seconds; empty without a rate
 * @param shares   what of it falls to each job, in the order of their first lines; their money sums to the whole
 */
public record RunCost(Seconds seconds, List<ToolUse> tools, Optional<Price> material, Optional<Price> time,
		List<Share> shares) {

	/**
	 * Where the time goes, in seconds.
	 *
	 * @param strokes with a tool down
	 * @param travel  lifted, from one stroke to the next
	 * @param lifts   setting tools down and lifting them
	 * @param stops   in which somebody changes the tool
	 */
	public record Seconds(double strokes, double travel, double lifts, double stops) {

		public double all() {
			return strokes + travel + lifts + stops;
		}
	}

	/**
	 * What a tool does.
	 *
	 * @param metres of line it follows, all passes counted
	 * @param edge   as it is after the run; empty for what has none
	 */
	public record ToolUse(Tool tool, double metres, Optional<Edge> edge) {
	}

	/**
	 * What falls to a job.
	 *
	 * @param job      its id
	 * @param name     by which people know it: its number, else its title
	 * @param area     of what it takes up on the sheet, in mm²
	 * @param seconds  of its lines, and its share of what all have in common
	 * @param material of the price of the sheet
	 * @param time     of the price of the seconds
	 */
	public record Share(String job, String name, double area, double seconds, Optional<Price> material,
			Optional<Price> time) {

		/** Both together; empty if there is none, or they are not in one currency. */
		public Optional<Price> total() {
			return sum(material, time);
		}
	}

	public RunCost {
		tools = List.copyOf(tools);
		shares = List.copyOf(shares);
	}

	/** Material and time together; empty if neither is known, or they are not in one currency. */
	public Optional<Price> total() {
		return sum(material, time);
	}

	/** Of all tools, in metres. */
	public double metres() {
		return tools.stream().mapToDouble(ToolUse::metres).sum();
	}

	/** With all decimals of its currency, such as {@code 0.50 EUR}. */
	public static String text(Price price) {
		int decimals = Math.max(price.amount().scale(), price.currency().getDefaultFractionDigits());
		return price.amount().setScale(Math.max(0, decimals)).toPlainString() + ' ' + price.currency().getCurrencyCode();
	}

	private static Optional<Price> sum(Optional<Price> one, Optional<Price> other) {
		if (one.isEmpty() || other.isEmpty()) {
			return one.or(() -> other);
		}
		BigDecimal amount = one.get().amount().add(other.get().amount());
		return one.get().currency().equals(other.get().currency())
				? Optional.of(new Price(amount, one.get().currency()))
				: Optional.empty();
	}
}
