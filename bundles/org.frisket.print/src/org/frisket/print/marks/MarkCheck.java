package org.frisket.print.marks;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Length;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.MarkKind;
import org.frisket.print.register.RegisterFinding;
import org.frisket.print.register.RegisterFinding.Severity;

/** What is wrong with the marks of a sheet, before it is printed. */
public final class MarkCheck {

	/** A stroke or disc that is finer in pixels of the scan is not found for sure; from trials with {@link MarkFinder}. */
	private static final double LEAST_PIXELS = 4;
	/** A sheet looks the same if marks fall on marks within this share of their spread. */
	private static final double ALIKE = 0.02;
	private static final double MM_PER_INCH = 25.4;
	private static final int DECIMALS = 2;
	private static final double ROUNDING = 1e-9;

	private final MarkPlan plan;
	private final List<RegisterFinding> findings = new ArrayList<>();

	private MarkCheck(MarkPlan plan) {
		this.plan = plan;
	}

	/**
	 * In the order of the marks, then what concerns all of them.
	 *
	 * @param parts the boxes of what lies on the sheet @param gap to be between a mark and a part, mm
	 * @param dpi   of the scan that is to find the marks
	 */
	public static List<RegisterFinding> of(MarkPlan plan, List<Bounds> parts, double gap, double dpi) {
		MarkCheck check = new MarkCheck(plan);
		for (int i = 0; i < plan.marks().size(); i++) {
			Mark mark = plan.marks().get(i);
			check.margin(i + 1, mark);
			check.parts(i + 1, mark, parts, Math.max(gap, mark.design().quiet()));
			check.size(i + 1, mark, dpi);
		}
		check.symmetry();
		if (plan.marks().size() == MarkPlan.LEAST_MARKS) {
			check.findings.add(RegisterFinding.plain("marks-three", Severity.NOTE, check.centre(), Messages.MarkCheck_three,
					Messages.MarkCheck_threeCure));
		}
		return check.findings;
	}

	private Point centre() {
		return new Point(plan.width() / 2, plan.height() / 2);
	}

	private void margin(int number, Mark mark) {
		Bounds bounds = mark.bounds();
		Bounds printable = plan.printable();
		double over = Math.max(Math.max(printable.minX() - bounds.minX(), bounds.maxX() - printable.maxX()),
				Math.max(printable.minY() - bounds.minY(), bounds.maxY() - printable.maxY()));
		if (over > ROUNDING) {
			findings.add(RegisterFinding.measured("mark-in-margin", Severity.BLOCKING, mark.place(), over, 0,
					NLS.bind(Messages.MarkCheck_margin, number, text(over)), Messages.MarkCheck_marginCure));
		}
	}

	private void parts(int number, Mark mark, List<Bounds> parts, double room) {
		double nearest = parts.stream().mapToDouble(part -> gap(mark.bounds(), part)).min().orElse(Double.POSITIVE_INFINITY);
		if (nearest < room - ROUNDING) {
			findings.add(RegisterFinding.measured("mark-near-part", nearest > 0 ? Severity.CAUTION : Severity.BLOCKING,
					mark.place(), nearest, room, NLS.bind(Messages.MarkCheck_near, new Object[] { number, text(nearest), text(room) }),
					Messages.MarkCheck_nearCure));
		}
	}

	private void size(int number, Mark mark, double dpi) {
		double finest = mark.design().kind() == MarkKind.DISC ? mark.design().size() : mark.design().weight();
		double least = LEAST_PIXELS / dpi * MM_PER_INCH;
		if (finest < least) {
			findings.add(RegisterFinding.measured("mark-too-fine", Severity.CAUTION, mark.place(), finest, least,
					NLS.bind(Messages.MarkCheck_fine, new Object[] { number, text(finest), text(least), Math.round(dpi) }),
					Messages.MarkCheck_fineCure));
		}
	}

	/** Whether a turn or a mirror takes every mark to one that looks the same. */
	private void symmetry() {
		if (plan.marks().stream().anyMatch(mark -> mark.design().kind() == MarkKind.PENNANT)) {
			return;
		}
		Transform toCentre = Transform.translation(-centre().x(), -centre().y());
		double spread = plan.places().stream().mapToDouble(p -> p.distance(centre())).average().orElse(0);
		List<Transform> ways = List.of(Transform.scaling(-1, -1), Transform.rotation(Math.PI / 2), Transform.scaling(-1, 1),
				Transform.scaling(1, -1));
		for (Transform way : ways) {
			Transform map = toCentre.then(way).then(toCentre.inverse());
			boolean alike = plan.marks().stream().allMatch(mark -> plan.marks().stream()
					.anyMatch(other -> other.design().kind() == mark.design().kind()
							&& other.place().distance(map.apply(mark.place())) < ALIKE * spread));
			if (alike) {
				findings.add(RegisterFinding.plain("marks-symmetric", Severity.CAUTION, centre(),
						way.determinant() > 0 ? Messages.MarkCheck_turned : Messages.MarkCheck_mirrored,
						Messages.MarkCheck_symmetricCure));
				return;
			}
		}
	}

	/** Between two boxes; negative if they overlap. */
	static double gap(Bounds one, Bounds other) {
		double x = Math.max(one.minX(), other.minX()) - Math.min(one.maxX(), other.maxX());
		double y = Math.max(one.minY(), other.minY()) - Math.min(one.maxY(), other.maxY());
		return x > 0 && y > 0 ? Math.hypot(x, y) : Math.max(x, y);
	}

	private static String text(double mm) {
		return Length.text(mm, DECIMALS);
	}
}
