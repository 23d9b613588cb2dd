package org.frisket.toolpath;

import java.util.Objects;

/**
 * What whoever runs a sheet has to decide.
 *
 * @param leadIn     in mm before the start of a closed cut, along it, where the blade comes down; 0 for none
 * @param overcut    in mm past the end of a closed cut, so that it closes
 * @param sharedOnce whether edges that neighbours share are cut once
 * @param tabs       what holds parts down while they are cut
 * @param passOrder  whether a part is gone over again at once, or the whole sheet
 * @param tight      curves of a smaller radius, in mm, are followed slower; 0 for none
 * @param tightSpeed the share of the tool's speed they are followed at, above 0 and up to 1
 * @param direction  which way round closed lines go
 * @param shuffles   how many places of the order are tried otherwise at most
 * @param seed       of all chance
 */
public record RunChoices(double leadIn, double overcut, boolean sharedOnce, Tabs tabs, PassOrder passOrder, double tight,
		double tightSpeed, Direction direction, long shuffles, long seed) {

	/**
	 * Short bridges left in closed cuts, to be parted by hand.
	 *
	 * @param count of them in a line, 0 for none
	 * @param width of each in mm
	 * @param least in mm: shorter lines get none
	 */
	public record Tabs(int count, double width, double least) {

		public static final Tabs NONE = new Tabs(0, 0, 0);

		public Tabs {
			if (count < 0 || !(width >= 0) || !(least >= 0)) {
				throw new IllegalArgumentException(count + " tabs of " + width + " mm in lines from " + least + " mm");
			}
		}
	}

	/** When a line that needs several passes gets the next. */
	public enum PassOrder {
		/** At once. */
		PART,
		/** After all other lines of its tool. */
		SHEET
	}

	/** Which way round closed lines go, as seen. */
	public enum Direction {
		/** Whatever is shorter. */
		EITHER, CLOCKWISE, COUNTER_CLOCKWISE
	}

	public RunChoices {
		Objects.requireNonNull(tabs);
		Objects.requireNonNull(passOrder);
		Objects.requireNonNull(direction);
		if (!(leadIn >= 0) || !(overcut >= 0) || !(tight >= 0) || !(tightSpeed > 0 && tightSpeed <= 1)
				|| shuffles < 0) {
			throw new IllegalArgumentException("lead-in " + leadIn + " mm, overcut " + overcut + " mm, tight " + tight
					+ " mm at " + tightSpeed + ", " + shuffles + " shuffles");
		}
	}

	/** Nothing beyond the lines themselves. */
	public static RunChoices plain() {
		return new RunChoices(0, 0, false, Tabs.NONE, PassOrder.PART, 0, 1, Direction.EITHER, 0, 1);
	}
}
