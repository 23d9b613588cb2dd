package org.frisket.ui.print.internal.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.print.output.PrintOptions;
import org.frisket.print.output.TurnEdge;
import org.frisket.print.register.PrinterProfile;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** How sheets are printed: the printer, the bleed, the turn, and what is printed besides the art. */
final class PrintPart {

	private static final int SPACING_PX = 8;

	private final Combo printer;
	private final Text bleed;
	private final Combo turn;
	private final Button knockOut;
	private final Button code;
	private final Button ruler;
	private final Button steps;
	/** As they are listed, after none. */
	private final List<PrinterProfile> profiles = new ArrayList<>();

	/** @param parent of three columns */
	PrintPart(Composite parent, Runnable changed) {
		printer = combo(parent, Messages.PrintPart_printer, Messages.PrintPart_printerTip, changed);
		printer.setData("printer"); //$NON-NLS-1$
		printer.setItems(Messages.PrintPart_noPrinter);
		printer.select(0);
		new Label(parent, SWT.NONE).setText(Messages.PrintPart_bleed);
		bleed = new Text(parent, SWT.BORDER);
		bleed.setData("bleed"); //$NON-NLS-1$
		bleed.setToolTipText(Messages.PrintPart_bleedTip);
		bleed.addListener(SWT.Modify, event -> changed.run());
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(bleed);
		turn = combo(parent, Messages.PrintPart_turn, Messages.PrintPart_turnTip, changed);
		turn.setData("turn"); //$NON-NLS-1$
		turn.setItems(Messages.PrintPart_turnSide, Messages.PrintPart_turnHead);
		new Label(parent, SWT.NONE);
		Composite checks = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACING_PX, SPACING_PX / 2).applyTo(checks);
		GridDataFactory.fillDefaults().span(2, 1).applyTo(checks);
		code = check(checks, Messages.PrintPart_code, Messages.PrintPart_codeTip, changed);
		ruler = check(checks, Messages.PrintPart_ruler, Messages.PrintPart_rulerTip, changed);
		knockOut = check(checks, Messages.PrintPart_knockOut, Messages.PrintPart_knockOutTip, changed);
		steps = check(checks, Messages.PrintPart_steps, Messages.PrintPart_stepsTip, changed);
		show(PrintOptions.USUAL);
	}

	private static Combo combo(Composite parent, String label, String tip, Runnable changed) {
		new Label(parent, SWT.NONE).setText(label);
		Combo combo = new Combo(parent, SWT.READ_ONLY);
		combo.setToolTipText(tip);
		combo.addListener(SWT.Selection, event -> changed.run());
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(combo);
		return combo;
	}

	private static Button check(Composite parent, String text, String tip, Runnable changed) {
		Button button = new Button(parent, SWT.CHECK);
		button.setText(text);
		button.setToolTipText(tip);
		button.addListener(SWT.Selection, event -> changed.run());
		return button;
	}

	/** All but the printer. */
	void show(PrintOptions options) {
		bleed.setText(LengthField.text(options.bleed()));
		turn.select(options.turn().ordinal());
		knockOut.setSelection(options.knockOut());
		code.setSelection(options.code());
		ruler.setSelection(options.ruler());
		steps.setSelection(options.steps());
	}

	/** The printers that the studio has measured. @param chosen the name of one; none if it is not there */
	void offer(List<PrinterProfile> known, String chosen) {
		profiles.clear();
		profiles.addAll(known);
		printer.setItems(Messages.PrintPart_noPrinter);
		profiles.forEach(each -> printer.add(NLS.bind(Messages.PrintPart_measured, each.name(), each.measured())));
		List<String> names = profiles.stream().map(PrinterProfile::name).toList();
		printer.select(names.indexOf(chosen) + 1);
	}

	/** @throws IllegalArgumentException if the bleed is none; the message says why */
	PrintOptions options() {
		double mm = LengthField.AMOUNT.parse(bleed.getText(), 0);
		Optional<PrinterProfile> profile = printer.getSelectionIndex() <= 0 ? Optional.empty()
				: Optional.of(profiles.get(printer.getSelectionIndex() - 1));
		return new PrintOptions(mm, knockOut.getSelection(), TurnEdge.values()[turn.getSelectionIndex()], code.getSelection(),
				ruler.getSelection(), steps.getSelection(), profile);
	}
}
