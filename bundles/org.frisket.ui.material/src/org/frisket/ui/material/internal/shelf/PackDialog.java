package org.frisket.ui.material.internal.shelf;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.material.Caliper;
import org.frisket.material.StockField;
import org.frisket.material.shelf.PackStudy;
import org.frisket.material.weights.GradeMatch;
import org.frisket.material.weights.Thickness;
import org.frisket.ui.Icon;
import org.frisket.ui.material.internal.ShellRoom;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/**
 * What a pack may hold that says so many pounds, without saying of what: the weight in each grade, and how a scale and a
 * ruler find out which it is. What was found goes into the form of a stock.
 */
public final class PackDialog extends Dialog {

	private static final int USE_ID = IDialogConstants.CLIENT_ID;
	private static final int MARGIN_PX = 12;
	private static final int SPACE_PX = 4;
	private static final int WIDTH_PX = 460;

	/** Fields, what comes of them, and why nothing does. @param third null where there are two only */
	private record Part(Text first, Text second, Text third, Label answer, NoticeLine problem) {
	}

	private final Consumer<Map<StockField, String>> found;
	private final Map<StockField, String> result = new EnumMap<>(StockField.class);
	private Text says;
	private Label possible;
	private NoticeLine notPounds;
	private Part scale;
	private Part stack;

	/** @param found told what was found out when it is to be used */
	PackDialog(Shell parent, Consumer<Map<StockField, String>> found) {
		super(parent);
		this.found = found;
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.MODELESS);
		setBlockOnOpen(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.PackDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).spacing(SPACE_PX, 2 * SPACE_PX).applyTo(area);
		Group pack = group(area, Messages.PackDialog_pack, 2);
		says = text(pack, Messages.PackDialog_says, Messages.PackDialog_saysHint);
		notPounds = new NoticeLine(pack, Icon.CAUTION, 2);
		possible = words(pack, 2);
		Group weighing = group(area, Messages.PackDialog_weigh, 6);
		words(weighing, 6).setText(Messages.PackDialog_weighHow);
		Text size = text(weighing, Messages.PackDialog_size, "12x12in"); //$NON-NLS-1$
		Text sheets = text(weighing, Messages.PackDialog_sheets, "10"); //$NON-NLS-1$
		Text mass = text(weighing, Messages.PackDialog_mass, "163.3 g"); //$NON-NLS-1$
		NoticeLine unreadable = new NoticeLine(weighing, Icon.BLOCKING, 6);
		scale = new Part(size, sheets, mass, words(weighing, 6), unreadable);
		Group measuring = group(area, Messages.PackDialog_measure, 4);
		words(measuring, 4).setText(Messages.PackDialog_measureHow);
		Text height = text(measuring, Messages.PackDialog_height, LengthField.text(12.5));
		Text count = text(measuring, Messages.PackDialog_sheets, "50"); //$NON-NLS-1$
		NoticeLine wrong = new NoticeLine(measuring, Icon.BLOCKING, 4);
		stack = new Part(height, count, null, words(measuring, 4), wrong);
		study();
		return area;
	}

	private static Group group(Composite area, String title, int columns) {
		Group group = new Group(area, SWT.NONE);
		group.setText(title);
		GridLayoutFactory.fillDefaults().numColumns(columns).margins(2 * SPACE_PX, 2 * SPACE_PX)
				.spacing(2 * SPACE_PX, SPACE_PX).applyTo(group);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
		return group;
	}

	private Text text(Composite group, String label, String hint) {
		new Label(group, SWT.NONE).setText(label);
		Text text = new Text(group, SWT.BORDER | SWT.SINGLE);
		text.setMessage(hint);
		text.setData(label);
		GridDataFactory.fillDefaults().grab(true, false).hint(70, SWT.DEFAULT).applyTo(text);
		text.addListener(SWT.Modify, event -> study());
		return text;
	}

	private static Label words(Composite group, int columns) {
		Label words = new Label(group, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).hint(WIDTH_PX, SWT.DEFAULT).applyTo(words);
		return words;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, USE_ID, Messages.PackDialog_use, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.PackDialog_close, false);
		enable();
	}

	@Override
	protected void buttonPressed(int id) {
		if (id == USE_ID) {
			Map<StockField, String> copy = new EnumMap<>(result);
			close();
			found.accept(copy);
		} else {
			super.buttonPressed(id);
		}
	}

	private void study() {
		if (stack == null) {
			return;
		}
		result.clear();
		readPack();
		weigh();
		measure();
		enable();
		ShellRoom.fit(getShell());
	}

	private void enable() {
		Button use = getButton(USE_ID);
		if (use != null) {
			use.setEnabled(!result.isEmpty());
		}
	}

	private void readPack() {
		possible.setText(""); //$NON-NLS-1$
		notPounds.clear();
		if (!says.getText().isBlank()) {
			try {
				possible.setText(PackWords.of(PackStudy.read(says.getText())));
			} catch (IllegalArgumentException wrong) {
				notPounds.show(wrong.getMessage());
			}
		}
	}

	private void weigh() {
		scale.answer().setText(""); //$NON-NLS-1$
		scale.problem().clear();
		if (isFilled(scale.first(), scale.second(), scale.third())) {
			try {
				boolean useful = PackStudy.hasPounds(says.getText());
				PackStudy.Weighed weighed = PackStudy.weigh(useful ? says.getText() : "", scale.first().getText(), //$NON-NLS-1$
						scale.second().getText(), scale.third().getText());
				show(weighed, useful);
			} catch (IllegalArgumentException wrong) {
				scale.problem().show(wrong.getMessage());
			}
		}
	}

	private void show(PackStudy.Weighed weighed, boolean labelled) {
		StringBuilder lines = new StringBuilder(NLS.bind(Messages.PackDialog_weighed,
				StockText.grammage(weighed.grammage()), LengthField.number(Math.round(10_000 * weighed.uncertainty()) / 100.0)));
		weighed.matches().stream().filter(match -> match.sureness() != GradeMatch.Sureness.NO).forEach(match -> lines
				.append('\n').append(NLS.bind(Messages.PackDialog_match, new Object[] { match.weight().pounds().toPlainString(),
						StockText.of(match.weight().grade()), sureness(match.sureness()) })));
		lines.append('\n').append(Messages.PackDialog_stray);
		scale.answer().setText(lines.toString());
		result.put(StockField.GRAMMAGE, weighed.grammage().toPlainString());
		Optional<GradeMatch> best = weighed.matches().stream().findFirst().filter(match -> labelled
				&& (match.sureness() == GradeMatch.Sureness.SURE || match.sureness() == GradeMatch.Sureness.LIKELY));
		best.ifPresent(match -> {
			// what the pack says is the better number once it is known what it means
			result.put(StockField.GRAMMAGE, ""); //$NON-NLS-1$
			result.put(StockField.BASIS_WEIGHT, match.weight().pounds().toPlainString());
			result.put(StockField.GRADE, match.weight().grade().word());
		});
	}

	private static String sureness(GradeMatch.Sureness sureness) {
		return switch (sureness) {
		case SURE -> Messages.PackDialog_sure;
		case LIKELY -> Messages.PackDialog_likely;
		case UNSURE -> Messages.PackDialog_unsure;
		case NO -> ""; //$NON-NLS-1$
		};
	}

	private void measure() {
		stack.answer().setText(""); //$NON-NLS-1$
		stack.problem().clear();
		if (isFilled(stack.first(), stack.second())) {
			try {
				Thickness caliper = PackStudy.measure(LengthField.SIZE.parse(stack.first().getText(), 0),
						stack.second().getText());
				stack.answer().setText(NLS.bind(Messages.PackDialog_measured, StockText.number(caliper.mm(), 4),
						StockText.number(caliper.mils(), 2)));
				result.put(StockField.CALIPER, caliper.mm().toPlainString() + " mm"); //$NON-NLS-1$
				result.put(StockField.CALIPER_SOURCE, StockField.wordOf(Caliper.Source.MEASURED));
			} catch (IllegalArgumentException wrong) {
				stack.problem().show(wrong.getMessage());
			}
		}
	}

	private static boolean isFilled(Text... texts) {
		for (Text text : texts) {
			if (text.getText().isBlank()) {
				return false;
			}
		}
		return true;
	}
}
