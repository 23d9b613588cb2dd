package org.frisket.editing.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.FontRef;
import org.frisket.model.TextSpan;
import org.frisket.model.Wording;

/**
 * Sets some letters of a wording otherwise than the rest. Spans are parted and joined as it takes, so that no two
 * overlap and none says what the wording says itself.
 */
public final class ChangeSpan extends WordingEdit {

	private ChangeSpan(String name, Wording wording, int start, int end, UnaryOperator<Stretch> change) {
		super(name, wording, w -> differs(w, start, end, change), w -> write(w, changed(w, start, end, change)));
	}

	/**
	 * Another font; the reference is copied.
	 *
	 * @param start index of the first letter (UTF-16)
	 * @param end   index after the last letter
	 * @param font  null for that of the wording
	 */
	public static ChangeSpan font(Wording wording, int start, int end, FontRef font) {
		FontRef copy = EcoreUtil.copy(font);
		return new ChangeSpan(Messages.ChangeSpan_font, wording, start, end, stretch -> stretch.withFont(copy));
	}

	/** Another height of a capital in mm; 0 for that of the wording. Others are no change. */
	public static ChangeSpan height(Wording wording, int start, int end, double height) {
		return new ChangeSpan(Messages.ChangeSpan_height, wording, start, end,
				stretch -> height >= 0 && Double.isFinite(height) ? stretch.withHeight(height) : stretch);
	}

	/** Features besides those of the wording, such as {@code smcp}; null or empty for none. */
	public static ChangeSpan features(Wording wording, int start, int end, String features) {
		return new ChangeSpan(Messages.ChangeSpan_features, wording, start, end,
				stretch -> stretch.withFeatures(features));
	}

	private static boolean differs(Wording wording, int start, int end, UnaryOperator<Stretch> change) {
		if (Stretch.of(wording, start, end).isEmpty()) {
			return false;
		}
		List<Stretch> after = changed(wording, start, end, change);
		List<TextSpan> before = wording.getSpans();
		if (after.size() != before.size()) {
			return true;
		}
		for (int i = 0; i < after.size(); i++) {
			if (!after.get(i).isSaidBy(before.get(i))) {
				return true;
			}
		}
		return false;
	}

	private static List<Stretch> changed(Wording wording, int start, int end, UnaryOperator<Stretch> change) {
		int length = wording.getText() == null ? 0 : wording.getText().length();
		List<Stretch> stretches = new ArrayList<>(Stretch.of(wording, 0, start));
		Stretch.of(wording, Math.max(0, start), end).stream().map(change).forEach(stretches::add);
		stretches.addAll(Stretch.of(wording, Math.max(0, end), length));
		return Stretch.merged(stretches, wording);
	}

	private static void write(Wording wording, List<Stretch> stretches) {
		List<TextSpan> spans = stretches.stream().map(Stretch::span).toList();
		wording.getSpans().clear();
		wording.getSpans().addAll(spans);
	}
}
