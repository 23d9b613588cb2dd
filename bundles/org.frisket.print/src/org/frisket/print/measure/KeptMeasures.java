package org.frisket.print.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Point;
import org.frisket.model.FrisketFactory;
import org.frisket.model.MeasuredMark;
import org.frisket.model.Sheet;
import org.frisket.model.SheetFit;
import org.frisket.print.register.FitKind;

/** Measured marks as a job keeps them. */
public final class KeptMeasures {

	private KeptMeasures() {
	}

	/**
	 * A place or none for each mark of a sheet, in mm. What was measured of marks that are no more is left out.
	 *
	 * @param back whether those of its back are asked for, in the frame of the sheet turned over
	 */
	public static List<Optional<Point>> of(Sheet sheet, boolean back) {
		List<Optional<Point>> places = new ArrayList<>(Collections.nCopies(sheet.getMarks().size(), Optional.empty()));
		for (MeasuredMark each : sheet.getMeasured()) {
			if (each.isBack() == back && each.getMark() >= 0 && each.getMark() < places.size()) {
				places.set(each.getMark(), Optional.of(new Point(each.getX(), each.getY())));
			}
		}
		return places;
	}

	/** All measures of a sheet, as {@code SetMeasures} takes them, when those of one side are these and the others stay. */
	public static List<MeasuredMark> with(Sheet sheet, boolean back, List<Optional<Point>> places) {
		List<MeasuredMark> marks = new ArrayList<>(toModel(back ? of(sheet, false) : places, false));
		marks.addAll(toModel(back ? places : of(sheet, true), true));
		return marks;
	}

	private static List<MeasuredMark> toModel(List<Optional<Point>> places, boolean back) {
		List<MeasuredMark> marks = new ArrayList<>();
		for (int i = 0; i < places.size(); i++) {
			if (places.get(i).isPresent()) {
				MeasuredMark mark = FrisketFactory.INSTANCE.createMeasuredMark();
				mark.setMark(i);
				mark.setBack(back);
				mark.setX(places.get(i).get().x());
				mark.setY(places.get(i).get().y());
				marks.add(mark);
			}
		}
		return marks;
	}

	/** As the model calls it. */
	public static SheetFit toModel(FitKind kind) {
		return switch (kind) {
		case RIGID -> SheetFit.RIGID;
		case SIMILARITY -> SheetFit.SIMILARITY;
		case AFFINE -> SheetFit.AFFINE;
		case PROJECTIVE -> SheetFit.PROJECTIVE;
		};
	}
}
