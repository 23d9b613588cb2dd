package org.frisket.print.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.model.FrisketFactory;
import org.frisket.model.MeasuredMark;
import org.frisket.model.RegisterMark;
import org.frisket.model.Sheet;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkDesign;
import org.frisket.print.marks.MarkPlacement;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;
import org.frisket.print.register.Registration;

/** The register marks of a sheet as the job keeps them. */
public final class SheetMarks {

	private static final int USUAL_COUNT = 4;
	/** Between a mark and what is printed or cut, mm; a choice of ours. */
	public static final double GAP = 3;

	private SheetMarks() {
	}

	/** Empty for a sheet that has none. @throws RegisterException if those it has are no plan; says why */
	public static Optional<MarkPlan> plan(Sheet sheet) throws RegisterException {
		if (sheet.getMarks().isEmpty()) {
			return Optional.empty();
		}
		try {
			return Optional.of(new MarkPlan(sheet.getWidth(), sheet.getHeight(), sheet.getPrintMargin(),
					sheet.getMarks().stream().map(SheetMarks::mark).toList()));
		} catch (IllegalArgumentException e) {
			throw new RegisterException(e.getMessage());
		}
	}

	/**
	 * Where marks could stand.
	 *
	 * @param taken boxes of what is printed and cut
	 * @throws RegisterException if there is no room
	 */
	public static MarkPlan propose(Sheet sheet, List<Bounds> taken) throws RegisterException {
		return new MarkPlacement(MarkDesign.USUAL, USUAL_COUNT, GAP).propose(sheet.getWidth(), sheet.getHeight(),
				sheet.getPrintMargin(), taken);
	}

	/** As the edit {@code SetMarks} takes them. */
	public static List<RegisterMark> toModel(MarkPlan plan) {
		List<RegisterMark> marks = new ArrayList<>();
		for (Mark mark : plan.marks()) {
			RegisterMark each = FrisketFactory.INSTANCE.createRegisterMark();
			each.setKind(mark.design().kind());
			each.setX(mark.place().x());
			each.setY(mark.place().y());
			each.setTurn(Math.toDegrees(mark.turn()));
			each.setSize(mark.design().size());
			each.setWeight(mark.design().weight());
			each.setQuiet(mark.design().quiet());
			marks.add(each);
		}
		return marks;
	}

	private static Mark mark(RegisterMark mark) {
		return new Mark(new MarkDesign(mark.getKind(), mark.getSize(), mark.getWeight(), mark.getQuiet()),
				new Point(mark.getX(), mark.getY()), Math.toRadians(mark.getTurn()));
	}

	/** What the sheet is taken to have done. */
	public static FitKind fitKind(Sheet sheet) {
		return switch (sheet.getFit()) {
		case RIGID -> FitKind.RIGID;
		case SIMILARITY -> FitKind.SIMILARITY;
		case AFFINE -> FitKind.AFFINE;
		case PROJECTIVE -> FitKind.PROJECTIVE;
		};
	}

	/** How the sheet lies by the measure that it keeps of its front; empty if that was not measured. */
	public static Optional<Registration> kept(Sheet sheet, MarkPlan plan) throws RegisterException {
		return kept(sheet, plan, false);
	}

	/**
	 * How the sheet lies turned over, by the measure that it keeps of its back; empty if that was not measured.
	 *
	 * @param plan of the marks as seen from the front
	 * @param turn over which the sheet is turned; cuts are at the same places with either, for every fit may turn by half
	 */
	public static Optional<Registration> keptBack(Sheet sheet, MarkPlan plan, TurnEdge turn) throws RegisterException {
		return kept(sheet, turn.over(plan), true);
	}

	private static Optional<Registration> kept(Sheet sheet, MarkPlan plan, boolean back) throws RegisterException {
		List<Point> designed = new ArrayList<>();
		List<Point> measured = new ArrayList<>();
		List<Integer> numbers = new ArrayList<>();
		for (MeasuredMark found : sheet.getMeasured()) {
			if (found.isBack() != back) {
				continue;
			}
			if (found.getMark() < 0 || found.getMark() >= plan.marks().size()) {
				throw new RegisterException(NLS.bind(Messages.SheetMarks_noMark, found.getMark() + 1, plan.marks().size()));
			}
			designed.add(plan.marks().get(found.getMark()).place());
			measured.add(new Point(found.getX(), found.getY()));
			numbers.add(found.getMark() + 1);
		}
		return designed.isEmpty() ? Optional.empty()
				: Optional.of(sound(Registration.fit(fitKind(sheet), designed, measured, numbers)));
	}

	/**
	 * How the sheet lies by marks that were measured in the order of the plan.
	 *
	 * @throws RegisterException if they do not tell, or not for sure, or tell that the sheet is mirrored or marks are mixed up
	 */
	public static Registration measured(MarkPlan plan, FitKind kind, List<Point> measured) throws RegisterException {
		return sound(Registration.fit(kind, plan.places(), measured));
	}

	/** @throws RegisterException if nothing may be cut by it; says why, and what helps */
	public static Registration sound(Registration fit) throws RegisterException {
		Optional<RegisterFinding> worst = fit.findings().stream().filter(RegisterFinding::isBlocking).findFirst();
		if (worst.isPresent()) {
			throw new RegisterException(worst.get().message() + " " + worst.get().cure());
		}
		return fit;
	}
}
