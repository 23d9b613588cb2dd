package org.frisket.ui.print.internal.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.frisket.print.measure.MeasuredSheet;
import org.frisket.print.output.PartOnSheet;
import org.frisket.print.register.FitKind;

/** What the measured marks say: how the sheet lies, how sure that is, and for which printer that holds. */
public final class FitPanel extends Composite {

	private static final int SPACE_PX = 8;
	private static final int LEAST_PX = 60;
	private static final int TABLE_PX = 110;

	/** What is asked for here. */
	interface Client {

		void fit(FitKind kind);

		/** Null for none. */
		void printer(String name);

		/** Keep what was measured as what a printer does. */
		void keepPrinter();

		void managePrinters();
	}

	private final Client client;
	private final Combo kind;
	private final Label words;
	private final Table parts;
	private final Combo printer;
	private final Button keep;
	private List<String> printers = List.of();

	FitPanel(Composite parent, Client client) {
		super(parent, SWT.NONE);
		this.client = client;
		GridLayoutFactory.fillDefaults().spacing(SPACE_PX, SPACE_PX).applyTo(this);
		Group fit = group(Messages.FitPanel_fit);
		kind = new Combo(fit, SWT.READ_ONLY);
		for (FitKind each : FitKind.values()) {
			kind.add(FitWords.kind(each));
		}
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(kind);
		kind.addListener(SWT.Selection, event -> client.fit(FitKind.values()[kind.getSelectionIndex()]));
		words = new Label(fit, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(words);
		parts = new Table(fit, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
		parts.setHeaderVisible(true);
		new TableColumn(parts, SWT.NONE).setText(Messages.FitPanel_part);
		new TableColumn(parts, SWT.NONE).setText(Messages.FitPanel_error);
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, TABLE_PX).exclude(true).applyTo(parts);
		parts.setVisible(false);
		Group printing = group(Messages.FitPanel_printer);
		printer = new Combo(printing, SWT.READ_ONLY);
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(printer);
		printer.addListener(SWT.Selection, event -> client.printer(
				printer.getSelectionIndex() == 0 ? null : printers.get(printer.getSelectionIndex() - 1)));
		Composite buttons = new Composite(printing, SWT.NONE);
		buttons.setLayout(new RowLayout());
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(buttons);
		keep = button(buttons, Messages.FitPanel_keep, client::keepPrinter);
		button(buttons, Messages.FitPanel_manage, client::managePrinters);
	}

	private Group group(String title) {
		Group group = new Group(this, SWT.NONE);
		group.setText(title);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, SPACE_PX / 2).applyTo(group);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
		return group;
	}

	private static Button button(Composite parent, String text, Runnable action) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> action.run());
		return button;
	}

	/** @param named the printer that the sheet names; null for none */
	void show(MeasuredSheet measured, List<PartOnSheet> laid, String named) {
		kind.select(measured.kind().ordinal());
		String said = String.join("\n", FitWords.lines(measured)).replace("&", "&&"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		if (!said.equals(words.getText())) {
			words.setText(said);
			words.requestLayout();
		}
		showParts(measured, laid);
		keep.setEnabled(measured.isSound() && measured.kind() == FitKind.AFFINE);
		select(named);
	}

	private void showParts(MeasuredSheet measured, List<PartOnSheet> laid) {
		List<String[]> lines = new ArrayList<>();
		for (PartOnSheet part : laid) {
			String error = FitWords.error(measured, part);
			if (!error.isEmpty()) {
				lines.add(new String[] { FitWords.part(part, laid), error });
			}
		}
		parts.setRedraw(false);
		parts.removeAll();
		lines.forEach(line -> new TableItem(parts, SWT.NONE).setText(line));
		for (TableColumn column : parts.getColumns()) {
			column.pack();
		}
		parts.setRedraw(true);
		GridData data = (GridData) parts.getLayoutData();
		if (data.exclude != lines.isEmpty()) {
			data.exclude = lines.isEmpty();
			parts.setVisible(!lines.isEmpty());
			parts.requestLayout();
		}
	}

	/** The studio's printers. */
	void offer(List<String> names) {
		if (!names.equals(printers) || printer.getItemCount() == 0) {
			printers = List.copyOf(names);
		}
	}

	private void select(String named) {
		List<String> all = new ArrayList<>();
		all.add(Messages.FitPanel_noPrinter);
		all.addAll(printers);
		if (named != null && !printers.contains(named)) {
			// of another studio, or taken away
			printers = Stream.concat(printers.stream(), Stream.of(named)).toList();
			all.add(named);
		}
		if (!List.of(printer.getItems()).equals(all)) {
			printer.setItems(all.toArray(String[]::new));
		}
		printer.select(named == null ? 0 : printers.indexOf(named) + 1);
	}

	/** What is said of the fit. */
	public String words() {
		return words.getText();
	}

	public Combo kind() {
		return kind;
	}
}
