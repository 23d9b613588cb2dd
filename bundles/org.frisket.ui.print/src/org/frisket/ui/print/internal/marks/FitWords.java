package org.frisket.ui.print.internal.marks;

import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Point;
import org.frisket.print.measure.MeasuredSheet;
import org.frisket.print.output.PartOnSheet;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.Lie;
import org.frisket.print.register.Registration;
import org.frisket.ui.LengthText;
import org.frisket.ui.views.internal.ElementText;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** What a fit says, in words and in the unit of the studio. */
final class FitWords {

	private static final int DIGITS = 3;
	/** In mm; what is read nearer than that proves nothing more. */
	private static final double CLOSE = 0.01;

	private FitWords() {
	}

	static String kind(FitKind kind) {
		return switch (kind) {
		case RIGID -> Messages.FitWords_rigid;
		case SIMILARITY -> Messages.FitWords_similarity;
		case AFFINE -> Messages.FitWords_affine;
		case PROJECTIVE -> Messages.FitWords_projective;
		};
	}

	/** A line for each thing there is to say. */
	static List<String> lines(MeasuredSheet measured) {
		if (measured.count() == 0) {
			return List.of(Messages.FitWords_none);
		}
		List<String> lines = new ArrayList<>();
		lines.add(NLS.bind(Messages.FitWords_count, measured.count(), measured.plan().marks().size()));
		if (measured.fit().isEmpty()) {
			lines.add(measured.trouble());
			return lines;
		}
		Registration fit = measured.fit().get();
		lines.addAll(lie(fit));
		Optional<Integer> worst = measured.worst();
		lines.add(fit.max() < CLOSE / 2 ? NLS.bind(Messages.FitWords_close, LengthField.text(CLOSE))
				: NLS.bind(Messages.FitWords_rms, new Object[] { LengthField.text(fit.rms()),
						worst.map(mark -> mark + 1).orElse(0), LengthField.text(fit.max()) }));
		lines.add(fit.redundancy() == 0 ? Messages.FitWords_noneToSpare
				: fit.redundancy() == 1 ? Messages.FitWords_oneToSpare : NLS.bind(Messages.FitWords_toSpare, fit.redundancy()));
		return lines;
	}

	private static List<String> lie(Registration fit) {
		List<String> lines = new ArrayList<>();
		Point corner = fit.map().apply(Point.ORIGIN);
		lines.add(NLS.bind(Messages.FitWords_shift, LengthText.place(corner.x(), corner.y())));
		Lie lie = fit.lie();
		double degrees = Math.toDegrees(lie.rotation());
		lines.add(NLS.bind(degrees < 0 ? Messages.FitWords_turnedLeft : Messages.FitWords_turnedRight,
				number(Math.abs(degrees))));
		if (fit.kind() == FitKind.SIMILARITY) {
			lines.add(NLS.bind(Messages.FitWords_scale, percent(lie.scale())));
		} else if (fit.kind() != FitKind.RIGID) {
			lines.add(NLS.bind(Messages.FitWords_scales, percent(lie.scaleX()), percent(lie.scaleY())));
			lines.add(NLS.bind(Messages.FitWords_skew, number(Math.toDegrees(lie.skew()))));
		}
		return lines;
	}

	/** What a part is called; numbered where the sheet has several of it. @param laid all parts on the sheet */
	static String part(PartOnSheet part, List<PartOnSheet> laid) {
		String name = (ElementText.of(part.element()) + " " + part.piece()).strip(); //$NON-NLS-1$
		List<PartOnSheet> alike = laid.stream()
				.filter(other -> other.element() == part.element() && other.key().equals(part.key())).toList();
		return alike.size() < 2 ? name
				: NLS.bind(Messages.FitWords_copy, new Object[] { name, alike.indexOf(part) + 1, alike.size() });
	}

	/** What a cut at a part may be off; empty if nothing is known of it. */
	static String error(MeasuredSheet measured, PartOnSheet part) {
		var error = measured.errorAt(part.room().bounds().centre());
		if (error.isEmpty()) {
			return ""; //$NON-NLS-1$
		}
		return error.getAsDouble() < CLOSE ? NLS.bind(Messages.FitWords_below, LengthField.text(CLOSE))
				: NLS.bind(Messages.FitWords_error, LengthField.text(error.getAsDouble()));
	}

	/** For what a blade does next. */
	static String caution(MeasuredSheet measured) {
		return measured.count() == 0 ? "" //$NON-NLS-1$
				: measured.isSound() ? Messages.FitWords_followed : Messages.FitWords_notFollowed;
	}

	private static String percent(double factor) {
		return number(factor * 100);
	}

	private static String number(double value) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMinimumFractionDigits(DIGITS);
		format.setMaximumFractionDigits(DIGITS);
		// a value that rounds to nothing has no sign
		return format.format(Math.abs(value) < 0.5 * Math.pow(10, -DIGITS) ? 0 : value);
	}
}
