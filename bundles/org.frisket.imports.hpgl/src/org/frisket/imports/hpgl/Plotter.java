package org.frisket.imports.hpgl;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.Remark;
import org.frisket.imports.UnreadableArtException;

/** Does what the instructions say, one after the other. */
final class Plotter {

	/** Instructions and their parameters; more is no plot but an attack or an accident. */
	static final int MOST = 5_000_000;

	private record LeftOut(long position, int[] count) {
	}

	private final InstructionReader reader;
	private final Pens pens;
	private final Map<String, LeftOut> leftOut = new LinkedHashMap<>();
	private boolean relative;
	private long done;

	/** @param step length of a plotter unit in mm */
	Plotter(InstructionReader reader, double step) {
		this.reader = reader;
		pens = new Pens(step);
	}

	/** @return whether the instruction is one of HP-GL's */
	boolean run(Instruction in) throws UnreadableArtException {
		count(in, 1 + in.values().length);
		switch (in.mnemonic()) {
		case "IN", "DF" -> {
			pens.reset(in.mnemonic().equals("IN"));
			relative = false;
		}
		case "SP" -> pens.select((int) in.value(0));
		case "PU", "PD" -> {
			pens.setDown(in.mnemonic().equals("PD"));
			moves(in);
		}
		case "PA", "PR" -> {
			relative = in.mnemonic().equals("PR");
			moves(in);
		}
		case "AA", "AR" -> arc(need(in, 3));
		case "AT", "RT" -> arcThrough(need(in, 4));
		case "CI" -> circle(need(in, 1));
		case "EW", "WG" -> wedge(need(in, 3));
		case "EA", "RA", "ER", "RR" -> rectangle(need(in, 2));
		case "BZ", "BR" -> curves(in);
		case "PE" -> packed(in);
		case "PM" -> pens.polygonMode((int) in.value(0));
		case "EP", "FP" -> {
			pens.finish();
			drawOrFill(in, pens.polygon());
		}
		case "IP" -> pens.rescale(scale -> scale.setPoints(in.values()));
		case "SC" -> scale(in);
		case "RO" -> pens.rescale(scale -> scale.setTurn(in.value(0)));
		case "LB", "SM", "UC", "SY", "PB" -> leftOut.computeIfAbsent(in.mnemonic(),
				first -> new LeftOut(in.position(), new int[1])).count()[0]++;
		default -> {
			return isKnown(in.mnemonic());
		}
		}
		return true;
	}

	/** Those that draw nothing and change nothing that matters here. */
	private static boolean isKnown(String mnemonic) {
		return switch (mnemonic) {
		case "VS", "FS", "AS", "LT", "PW", "WU", "PG", "EC", "IW", "SI", "SR", "DI", "DR", "CS", "CA", "SS", "SA", "DT",
				"SL", "ES", "DV", "LO", "CP", "FT", "PT", "UL", "LA", "NR", "NP", "PC", "CR", "TR", "MC", "RF", "AC", "BP",
				"QL", "PS", "RP", "OH", "OS", "OE", "OI", "OP", "IM", "TL", "XT", "YT" ->
			true;
		default -> false;
		};
	}

	private void count(Instruction in, int more) throws UnreadableArtException {
		done += more;
		if (done > MOST) {
			throw reader.failure(in.position(), NLS.bind(Messages.Plotter_tooMany, MOST));
		}
	}

	private Instruction need(Instruction in, int values) throws UnreadableArtException {
		if (in.values().length < values) {
			throw wrong(in);
		}
		return in;
	}

	private UnreadableArtException wrong(Instruction in) {
		return reader.failure(in.position(), NLS.bind(Messages.Plotter_parameters, in.mnemonic(), in.values().length));
	}

	private void scale(Instruction in) throws UnreadableArtException {
		boolean[] extent = new boolean[1];
		pens.rescale(scale -> extent[0] = scale.setUser(in.values()));
		if (!extent[0]) {
			throw reader.failure(in.position(), Messages.Plotter_scale);
		}
	}

	private void moves(Instruction in) throws UnreadableArtException {
		if (in.values().length % 2 != 0) {
			throw wrong(in);
		}
		for (int i = 0; i < in.values().length; i += 2) {
			Point to = in.point(i);
			pens.moveTo(relative ? pens.at().plus(to) : to);
		}
	}

	/** Of degrees; more than a full turn goes round once. */
	private static double turn(double degrees) {
		return Math.toRadians(Math.max(-360, Math.min(360, degrees)));
	}

	private void arc(Instruction in) {
		Point centre = in.mnemonic().equals("AR") ? pens.at().plus(in.point(0)) : in.point(0);
		pens.arc(centre, turn(in.value(2)));
	}

	/** Through a point to another. */
	private void arcThrough(Instruction in) {
		Point origin = in.mnemonic().equals("RT") ? pens.at() : Point.ORIGIN;
		Point a = pens.at();
		Point ab = origin.plus(in.point(0)).minus(a);
		Point ac = origin.plus(in.point(2)).minus(a);
		double twice = 2 * ab.cross(ac);
		if (twice == 0) {
			pens.moveTo(a.plus(ac));
			return;
		}
		// the centre is as far from all three
		Point centre = a.plus(new Point((ac.y() * ab.dot(ab) - ab.y() * ac.dot(ac)) / twice,
				(ab.x() * ac.dot(ac) - ac.x() * ab.dot(ab)) / twice));
		Point from = a.minus(centre);
		Point to = a.plus(ac).minus(centre);
		double sweep = Math.atan2(from.cross(to), from.dot(to));
		if (twice > 0 && sweep < 0) {
			sweep += 2 * Math.PI;
		} else if (twice < 0 && sweep > 0) {
			sweep -= 2 * Math.PI;
		}
		pens.arc(centre, sweep);
	}

	private void circle(Instruction in) {
		double radius = Math.abs(in.value(0));
		if (radius > 0) {
			pens.circle(radius);
		}
	}

	private void wedge(Instruction in) {
		pens.finish();
		double radius = in.value(0);
		double from = Math.toRadians(in.value(1)) + (radius < 0 ? Math.PI : 0);
		OutlineBuilder wedge = pens.builder();
		wedge.moveTo(pens.at());
		wedge.arcAround(pens.at(), Math.abs(radius), Math.abs(radius), 0, from, turn(in.value(2)));
		wedge.close();
		drawOrFill(in, wedge.build());
	}

	/** From where the pen is to the opposite corner. */
	private void rectangle(Instruction in) {
		pens.finish();
		Point at = pens.at();
		Point to = in.mnemonic().endsWith("R") ? at.plus(in.point(0)) : in.point(0);
		if (at.x() != to.x() && at.y() != to.y()) {
			drawOrFill(in, Outline.of(
					Contour.polygon(List.of(at, new Point(to.x(), at.y()), to, new Point(at.x(), to.y())))));
		}
	}

	/** Mnemonics that begin with E draw the edge. */
	private void drawOrFill(Instruction in, Outline outline) {
		if (in.mnemonic().startsWith("E")) {
			pens.edge(outline);
		} else {
			pens.fill(outline);
		}
	}

	private void curves(Instruction in) throws UnreadableArtException {
		if (in.values().length % 6 != 0) {
			throw wrong(in);
		}
		for (int i = 0; i < in.values().length; i += 6) {
			Point origin = in.mnemonic().equals("BR") ? pens.at() : Point.ORIGIN;
			pens.curve(origin.plus(in.point(i)), origin.plus(in.point(i + 2)), origin.plus(in.point(i + 4)));
		}
	}

	/** Pen down and relative, but for what its flags say. */
	private void packed(Instruction in) throws UnreadableArtException {
		PackedPoints points = new PackedPoints(in.raw());
		boolean up = false;
		boolean absolute = false;
		for (int flag = points.flag(); flag >= 0; flag = points.flag()) {
			count(in, 1);
			switch (flag) {
			case '7' -> {
				// PackedPoints knows
			}
			case ':' -> pens.select((int) points.whole());
			case '>' -> points.setFraction((int) points.whole());
			case '<' -> up = true;
			case '=' -> absolute = true;
			default -> {
				Point to = new Point(points.number(), points.number());
				if (!to.isFinite()) {
					throw reader.failure(in.position(), NLS.bind(Messages.InstructionReader_number, in.mnemonic()));
				}
				pens.setDown(!up);
				pens.moveTo(absolute ? to : pens.at().plus(to));
				up = false;
				absolute = false;
			}
			}
		}
		pens.setDown(true);
	}

	/** All that was drawn. */
	ImportedArt art() {
		List<Remark> remarks = new ArrayList<>();
		leftOut.forEach((mnemonic, one) -> remarks.add(new Remark(InstructionReader.place(one.position()),
				NLS.bind(Messages.Plotter_leftOut, one.count()[0], mnemonic))));
		return new ImportedArt(pens.layers(), Bounds.EMPTY, remarks);
	}
}
