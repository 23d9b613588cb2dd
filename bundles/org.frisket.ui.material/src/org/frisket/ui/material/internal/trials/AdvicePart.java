package org.frisket.ui.material.internal.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.frisket.material.advice.Advice;
import org.frisket.material.advice.Caution;
import org.frisket.material.advice.Work;
import org.frisket.material.trials.BladeWear;
import org.frisket.material.trials.GoodWindow;
import org.frisket.material.trials.Reorder;
import org.frisket.material.trials.TestSheet;
import org.frisket.ui.Icon;
import org.frisket.ui.ThemeColour;
import org.eclipse.jface.resource.LocalResourceManager;

/** Advice in words: what to begin with, how sure that is and why, and what to mind. */
public final class AdvicePart extends Composite {

	private static final int SPACE_PX = 4;
	private static final int WIDTH_PX = 220;
	private final LocalResourceManager images;
	private String said = ""; //$NON-NLS-1$

	AdvicePart(Composite parent) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACE_PX, SPACE_PX).applyTo(this);
		images = new LocalResourceManager(JFaceResources.getResources(), this);
	}

	/**
	 * @param sheet  its window is spoken of; null for none
	 * @param metres of line that the sheet takes
	 * @param before what worked before, for a job or stock
	 */
	void show(Advice advice, Work work, TestSheet sheet, double metres, Optional<Reorder> before) {
		for (Control child : getChildren()) {
			child.dispose();
		}
		said = ""; //$NON-NLS-1$
		if (sheet != null) {
			showWindow(sheet, work);
		}
		heading(Messages.AdvicePart_title);
		line(null, SettingsWords.of(advice.settings(), work.machine()), false);
		line(null, NLS.bind(Messages.AdvicePart_confidence, advice.confidence().text()), false);
		advice.reasons().forEach(reason -> line(null, reason, false));
		heading(Messages.AdvicePart_cautions);
		BladeWear.warning(work.tool(), metres, work.stock().abrasion())
				.filter(warning -> advice.cautions().stream().noneMatch(caution -> caution.id().equals("blade.wear"))) //$NON-NLS-1$
				.ifPresent(warning -> line(Icon.CAUTION, warning, false));
		for (Caution caution : advice.cautions()) {
			line(caution.isBlocking() ? Icon.BLOCKING : Icon.CAUTION, caution.text(), caution.isBlocking());
		}
		before.ifPresent(reorder -> {
			heading(Messages.AdvicePart_before);
			line(null, SettingsWords.of(reorder.run().settings(), work.machine()), false);
			reorder.words().forEach(words -> line(null, words, false));
		});
		requestLayout();
	}

	private void showWindow(TestSheet sheet, Work work) {
		heading(Messages.AdvicePart_window);
		Optional<GoodWindow> window = sheet.window();
		if (window.isEmpty()) {
			line(null, sheet.verdicts().isEmpty() ? Messages.AdvicePart_unjudged : Messages.AdvicePart_noneGood, false);
			return;
		}
		List<String> cells = new ArrayList<>();
		window.get().cells().forEach(place -> cells.add(place.toString()));
		line(null, NLS.bind(Messages.AdvicePart_best, new Object[] { String.join(", ", cells), window.get().centre(), //$NON-NLS-1$
				SettingsWords.of(sheet.settings(window.get().centre()), work.machine()) }), false);
	}

	private void heading(String text) {
		Label label = new Label(this, SWT.NONE);
		label.setText(text);
		label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		GridDataFactory.fillDefaults().span(2, 1).indent(0, SPACE_PX).applyTo(label);
		said += text + '\n';
	}

	private void line(Icon icon, String text, boolean isBlocking) {
		if (icon != null) {
			Label sign = new Label(this, SWT.NONE);
			sign.setImage(images.create(icon.descriptor()));
			GridDataFactory.swtDefaults().align(SWT.CENTER, SWT.TOP).applyTo(sign);
		}
		Label label = new Label(this, SWT.WRAP);
		label.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		if (isBlocking) {
			label.setForeground(ThemeColour.FINDING_MESSAGE.colour());
		}
		GridDataFactory.fillDefaults().span(icon == null ? 2 : 1, 1).grab(true, false).hint(WIDTH_PX, SWT.DEFAULT)
				.applyTo(label);
		said += text + '\n';
	}

	/** All that is said, line by line. */
	public String said() {
		return said;
	}
}
