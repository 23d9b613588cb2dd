package org.frisket.material.tools;

/**
 * A machine as the studio knows it from its manual.
 *
 * @param area       what it reaches, and the borders it cannot work in
 * @param speed      its speed settings; their meaning is in mm/s
 * @param pressure   its pressure settings, or power for a laser; their meaning is in grams-force
 * @param mostPasses how often it goes over a line at most
 * @param plotting   how its coordinates run
 * @param motion     how it moves
 * @param words      of its control, where it is told what to do line by line
 * @param readsMarks whether it finds register marks by itself
 */
public record Machine(String id, String name, Process process, Area area, NativeScale speed, NativeScale pressure,
		int mostPasses, Plotting plotting, Motion motion, Words words, boolean readsMarks) {

	/** Lengths in mm; the margins lie within width and height. */
	public record Area(double width, double height, double left, double top, double right, double bottom) {

		public Area {
			if (!(width - left - right > 0) || !(height - top - bottom > 0)) {
				throw new IllegalArgumentException("an area of " + width + " × " + height + " mm is all margin");
			}
		}

		public double usableWidth() {
			return width - left - right;
		}

		public double usableHeight() {
			return height - top - bottom;
		}
	}

	/**
	 * How coordinates of a file become places.
	 *
	 * @param unitsPerMm plotter units in a millimetre; 40 in HP-GL
	 * @param xRight     whether x grows to the right
	 * @param yUp        whether y grows away from whoever stands in front
	 * @param inMargins  whether coordinates begin at that corner of what is within the margins, not of the whole area
	 * @param scaleX     what lengths along x are multiplied with, as calibrated; 1 for a machine that is true
	 * @param scaleY     the same along y
	 */
	public record Plotting(double unitsPerMm, boolean xRight, boolean yUp, Corner origin, boolean inMargins, double scaleX,
			double scaleY) {

		public Plotting {
			if (!(scaleX > 0) || !(scaleY > 0)) {
				throw new IllegalArgumentException("axes that are multiplied with " + scaleX + " and " + scaleY);
			}
		}

		/** A length in whole plotter units, the nearest. */
		public long units(double mm) {
			return Math.round(mm * unitsPerMm);
		}
	}

	/**
	 * How it moves.
	 *
	 * @param acceleration in mm/s²
	 * @param deviation    in mm: how far the carriage may be thought to cut a corner that it does not stop at
	 * @param travel       in mm/s, lifted
	 * @param lower        seconds to set the tool down
	 * @param lift         seconds to lift it
	 * @param change       seconds in which somebody changes the tool
	 * @param arcs         whether it follows arcs; otherwise it is given chords
	 * @param tolerance    in mm: how far arcs or chords may be from the curve
	 */
	public record Motion(double acceleration, double deviation, double travel, double lower, double lift, double change,
			boolean arcs, double tolerance) {

		public Motion {
			if (!(acceleration > 0) || !(deviation >= 0) || !(travel > 0) || !(lower >= 0) || !(lift >= 0) || !(change >= 0)
					|| !(tolerance > 0)) {
				throw new IllegalArgumentException("a machine that speeds up by " + acceleration + " mm/s², travels at "
						+ travel + " mm/s, lowers in " + lower + " s and is true to " + tolerance + " mm");
			}
		}
	}

	/**
	 * What its control is told, a block of a line each.
	 *
	 * @param down to set the tool down
	 * @param up   to lift it
	 * @param stop to wait until somebody starts it again
	 */
	public record Words(String down, String up, String stop) {
	}

	public Machine {
		if (mostPasses < 1) {
			throw new IllegalArgumentException("a machine that goes over a line " + mostPasses + " times");
		}
	}

	/** The same machine with its lengths multiplied with other factors. */
	public Machine withScale(double x, double y) {
		return new Machine(id, name, process, area, speed, pressure, mostPasses, new Plotting(plotting.unitsPerMm(),
				plotting.xRight(), plotting.yUp(), plotting.origin(), plotting.inMargins(), x, y), motion, words,
				readsMarks);
	}

	/**
	 * For whoever has described no machine: settings in percent of what the machine at hand can do, on a sheet of A4
	 * with borders of 10 mm. It is no particular machine.
	 */
	public static Machine plain() {
		return MachineOptions.machine("plain", java.util.Map.of());
	}
}
