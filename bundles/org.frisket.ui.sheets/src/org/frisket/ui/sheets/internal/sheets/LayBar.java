package org.frisket.ui.sheets.internal.sheets;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleConsumer;
import java.util.function.DoubleSupplier;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.material.sizes.Format;
import org.frisket.material.sizes.Formats;
import org.frisket.material.weights.MeasureException;
import org.frisket.model.Job;
import org.frisket.model.Laying;
import org.frisket.model.Turning;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.views.internal.TextKeys;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** The slim bar above the sheets: how parts are to be laid, and the button that lays them or stops that. */
final class LayBar {

	private static final int SPACE_PX = 8;
	private static final int SIZE_PX = 170;
	private static final int LENGTH_PX = 64;
	private static final int LENGTH_CHARS = 24;
	/** Offered where the stock has no sizes of its own. */
	private static final List<String> USUAL = List.of("A4", "A3", "SRA3", "12x12in", "roll 610mm"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$

	/** What is done when something is asked for. */
	interface Client {

		/** Lays the parts, or stops where that is under way. */
		void layOrStop();
	}

	private final Composite bar;
	private final Combo size;
	private final Text gap;
	private final Text margin;
	private final Combo turning;
	private final Button apart;
	private final Button byJob;
	private final Button lay;
	private final Label said;
	private final TextKeys keys;
	private Laying laying = LayChoices.of(null);
	private String trouble = ""; //$NON-NLS-1$

	LayBar(Composite parent, TextKeys keys, Client client) {
		this.keys = keys;
		bar = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX / 2, SPACE_PX / 2).spacing(0, SPACE_PX / 2).applyTo(bar);
		Composite row = new Composite(bar, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		// on a narrow screen the bar has two rows
		RowLayoutFactory.fillDefaults().spacing(SPACE_PX).applyTo(row);
		((RowLayout) row.getLayout()).center = true;
		size = new Combo(labelled(row, Messages.LayBar_size), SWT.DROP_DOWN);
		size.setToolTipText(Messages.LayBar_sizeTip);
		GridDataFactory.swtDefaults().hint(SIZE_PX, SWT.DEFAULT).applyTo(size);
		size.addListener(SWT.Selection, event -> takeSize());
		typed(size, this::takeSize);
		gap = length(labelled(row, Messages.LayBar_gap), Messages.LayBar_gapTip, () -> laying.getGap(),
				mm -> laying.setGap(mm));
		margin = length(labelled(row, Messages.LayBar_margin), Messages.LayBar_marginTip, () -> laying.getMargin(),
				mm -> laying.setMargin(mm));
		turning = new Combo(row, SWT.READ_ONLY);
		turning.setItems(Messages.LayBar_turnNone, Messages.LayBar_turnHalf, Messages.LayBar_turnQuarter,
				Messages.LayBar_turnFree);
		turning.setToolTipText(Messages.LayBar_turnTip);
		turning.addListener(SWT.Selection, event -> laying.setTurning(Turning.get(turning.getSelectionIndex())));
		apart = check(row, Messages.LayBar_apart, Messages.LayBar_apartTip);
		apart.addListener(SWT.Selection, event -> laying.setApart(apart.getSelection()));
		byJob = check(row, Messages.LayBar_byJob, Messages.LayBar_byJobTip);
		byJob.addListener(SWT.Selection, event -> laying.setByJob(byJob.getSelection()));
		lay = new Button(row, SWT.PUSH);
		lay.setText(Messages.LayBar_lay);
		lay.setToolTipText(Messages.LayBar_layTip);
		lay.addListener(SWT.Selection, event -> client.layOrStop());
		said = new Label(bar, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(said);
	}

	/** Room for a field behind its label, from which no end of a row parts it. */
	private static Composite labelled(Composite row, String text) {
		Composite pair = new Composite(row, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACE_PX / 2, 0).applyTo(pair);
		new Label(pair, SWT.NONE).setText(text);
		return pair;
	}

	private static Button check(Composite row, String text, String tip) {
		Button check = new Button(row, SWT.CHECK);
		check.setText(text);
		check.setToolTipText(tip);
		return check;
	}

	private Text length(Composite pair, String tip, DoubleSupplier now, DoubleConsumer sink) {
		Text text = new Text(pair, SWT.BORDER);
		text.setToolTipText(tip);
		text.setTextLimit(LENGTH_CHARS);
		GridDataFactory.swtDefaults().hint(LENGTH_PX, SWT.DEFAULT).applyTo(text);
		typed(text, () -> {
			try {
				double value = LengthField.AMOUNT.parse(text.getText(), now.getAsDouble());
				sink.accept(value);
				text.setText(LengthField.text(value));
				say(text, ""); //$NON-NLS-1$
			} catch (IllegalArgumentException e) {
				say(text, e.getMessage());
			}
		});
		return text;
	}

	/** Takes what was typed at Enter or when the field is left; keys for text are the field's while it is typed in. */
	private void typed(Control field, Runnable taken) {
		field.addListener(SWT.DefaultSelection, event -> taken.run());
		field.addListener(SWT.FocusIn, event -> keys.activate());
		field.addListener(SWT.FocusOut, event -> {
			keys.deactivate();
			taken.run();
		});
	}

	private void takeSize() {
		String text = size.getText().strip();
		if (text.isEmpty() || text.equals(Messages.LayBar_ofStock)) {
			laying.setWidth(0);
			laying.setHeight(0);
			laying.setRoll(false);
			say(size, ""); //$NON-NLS-1$
			return;
		}
		try {
			Format format = Formats.parse(text);
			if (format instanceof Format.Sheet sheet) {
				laying.setWidth(sheet.width().doubleValue());
				laying.setHeight(sheet.height().doubleValue());
			} else if (format instanceof Format.Roll roll) {
				laying.setWidth(0);
				laying.setHeight(roll.width().doubleValue());
			}
			laying.setRoll(format instanceof Format.Roll);
			say(size, ""); //$NON-NLS-1$
		} catch (MeasureException e) {
			say(size, e.getMessage());
		}
	}

	private void say(Control field, String text) {
		field.setForeground(text.isEmpty() ? null : ThemeColour.FINDING_MESSAGE.colour());
		trouble = text;
		said.setText(text);
		relayout();
	}

	private void relayout() {
		boolean seen = !said.getText().isEmpty();
		((GridData) said.getLayoutData()).exclude = !seen;
		said.setVisible(seen);
		bar.getParent().layout(true, true);
	}

	/** Shows the choices of a job. @param sizes that the stock comes in */
	void show(Job job, List<String> sizes) {
		laying = LayChoices.of(job);
		offer(sizes);
		gap.setText(LengthField.text(laying.getGap()));
		margin.setText(LengthField.text(laying.getMargin()));
		turning.select(laying.getTurning().getValue());
		apart.setSelection(laying.isApart());
		byJob.setSelection(laying.isByJob());
	}

	/** Offers other sizes. */
	void offer(List<String> sizes) {
		Set<String> offered = new LinkedHashSet<>();
		offered.add(Messages.LayBar_ofStock);
		offered.addAll(sizes);
		offered.addAll(USUAL);
		size.setItems(offered.toArray(String[]::new));
		size.setText(sizeText());
	}

	private String sizeText() {
		if (laying.isRoll()) {
			return "roll " + LengthField.number(laying.getHeight()) + "mm"; //$NON-NLS-1$ //$NON-NLS-2$
		}
		if (!(laying.getWidth() > 0) || !(laying.getHeight() > 0)) {
			return Messages.LayBar_ofStock;
		}
		return new Format.Sheet(BigDecimal.valueOf(laying.getWidth()), BigDecimal.valueOf(laying.getHeight()))
				.toString();
	}

	/** As they are chosen now. */
	Laying choices() {
		return laying;
	}

	/** Whether something that was typed cannot be taken. */
	boolean hasTrouble() {
		return !trouble.isEmpty();
	}

	/** What the bar says below; an empty text takes no room. */
	void say(String text) {
		if (trouble.isEmpty() && !said.getText().equals(text)) {
			said.setText(text);
			relayout();
		}
	}

	String said() {
		return said.getText();
	}

	/** While it goes on the button stops it, and nothing else can be chosen. */
	void setLaying(boolean under) {
		lay.setText(under ? Messages.LayBar_stop : Messages.LayBar_lay);
		lay.setToolTipText(under ? Messages.LayBar_stopTip : Messages.LayBar_layTip);
		for (Control each : List.of(size, gap, margin, turning, apart, byJob)) {
			each.setEnabled(!under);
		}
		lay.getParent().layout(true);
	}

	/** Whether anything can be laid. */
	void setEnabled(boolean enabled) {
		lay.setEnabled(enabled);
	}

	Button button() {
		return lay;
	}

	Control control() {
		return bar;
	}

	void setFocus() {
		lay.setFocus();
	}
}
