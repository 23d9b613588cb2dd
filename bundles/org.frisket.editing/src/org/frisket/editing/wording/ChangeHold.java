package org.frisket.editing.wording;

import java.util.function.Consumer;
import java.util.function.Predicate;

import org.frisket.model.Bar;
import org.frisket.model.BarKind;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Wording;

/** Changes what holds the letters of a wording together: ties and bars. Lengths are in mm. */
public final class ChangeHold extends WordingEdit {

	/** How far a bar reaches into the letters that it is to hold, as joined letters do. */
	private static final double HOLD = 0.3;
	/** Of the height of a capital; as thick as a usual stem. */
	private static final double THICKNESS = 0.1;
	private static final double LEAST_THICKNESS = 1;

	private ChangeHold(String name, Wording wording, Predicate<Wording> differs, Consumer<Wording> change) {
		super(name, wording, differs, change);
	}

	/** Ties dots and accents to their letters, or not. */
	public static ChangeHold ties(Wording wording, boolean ties) {
		return new ChangeHold(Messages.ChangeHold_ties, wording, w -> ties != w.isTieMarks(), w -> w.setTieMarks(ties));
	}

	/** The width of those ties, positive; with it they are there. */
	public static ChangeHold tieWidth(Wording wording, double width) {
		return new ChangeHold(Messages.ChangeHold_tieWidth, wording,
				w -> width > 0 && Double.isFinite(width) && (!w.isTieMarks() || width != w.getTieWidth()), w -> {
					w.setTieMarks(true);
					w.setTieWidth(width);
				});
	}

	/** One more bar, or a frame, after those there are. */
	public static ChangeHold addBar(Wording wording, BarKind kind, double offset, double thickness) {
		return new ChangeHold(Messages.ChangeHold_addBar, wording,
				w -> kind != null && Double.isFinite(offset) && thickness > 0 && Double.isFinite(thickness), w -> {
					Bar bar = FrisketFactory.INSTANCE.createBar();
					bar.setKind(kind);
					bar.setOffset(offset);
					bar.setThickness(thickness);
					w.getBars().add(bar);
				});
	}

	/** One more, as thick as suits the letters and where it holds them. */
	public static ChangeHold addBar(Wording wording, BarKind kind) {
		double thickness = Math.max(LEAST_THICKNESS, Math.rint(wording.getHeight() * THICKNESS * 10) / 10);
		return addBar(wording, kind, usualOffset(kind), thickness);
	}

	/** Where a bar of a kind holds the letters. */
	private static double usualOffset(BarKind kind) {
		return kind == BarKind.BASELINE ? 0 : -HOLD;
	}

	/** @param place of the bar among those of the wording */
	public static ChangeHold removeBar(Wording wording, int place) {
		return new ChangeHold(Messages.ChangeHold_removeBar, wording, w -> has(w, place), w -> w.getBars().remove(place));
	}

	/** Another kind where it holds the letters, for an offset means something else then. */
	public static ChangeHold barKind(Wording wording, int place, BarKind kind) {
		return bar(Messages.ChangeHold_barKind, wording, place, bar -> kind != null && kind != bar.getKind(), bar -> {
			bar.setKind(kind);
			bar.setOffset(usualOffset(kind));
		});
	}

	/** Positive. */
	public static ChangeHold barThickness(Wording wording, int place, double thickness) {
		return bar(Messages.ChangeHold_barThickness, wording, place,
				bar -> thickness > 0 && isOther(thickness, bar.getThickness(), 0), bar -> bar.setThickness(thickness));
	}

	/** From the baseline down, or of a frame from the letters out. */
	public static ChangeHold barOffset(Wording wording, int place, double offset) {
		return bar(Messages.ChangeHold_barOffset, wording, place,
				bar -> Double.isFinite(offset) && offset != bar.getOffset(), bar -> bar.setOffset(offset));
	}

	/** Beyond both ends of the line. */
	public static ChangeHold barOverhang(Wording wording, int place, double overhang) {
		return bar(Messages.ChangeHold_barOverhang, wording, place,
				bar -> Double.isFinite(overhang) && overhang != bar.getOverhang(), bar -> bar.setOverhang(overhang));
	}

	private static ChangeHold bar(String name, Wording wording, int place, Predicate<Bar> differs, Consumer<Bar> change) {
		return new ChangeHold(name, wording, w -> has(w, place) && differs.test(w.getBars().get(place)),
				w -> change.accept(w.getBars().get(place)));
	}

	private static boolean has(Wording wording, int place) {
		return place >= 0 && place < wording.getBars().size();
	}
}
