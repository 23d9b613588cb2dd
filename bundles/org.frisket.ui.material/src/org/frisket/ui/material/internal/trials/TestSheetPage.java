package org.frisket.ui.material.internal.trials;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.frisket.material.desk.DeskState;
import org.frisket.material.trials.Reorder;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.TestSheet;
import org.frisket.material.trials.Verdict;
import org.frisket.ui.material.internal.machines.DeskBar;
import org.frisket.ui.material.internal.machines.StudioDesk;

/** The widgets of the page of a test sheet: form, advice and history on the left, picture and chart on the right. */
public final class TestSheetPage {

	/** What is asked for on the page. */
	interface Client {

		void workChanged();

		void valueChanged();

		/** What is advised for the work in the form. */
		Settings advisedSettings();

		void judge(Optional<Verdict> verdict);

		void listens(boolean now);

		void openAsJob();

		void open(TestSheetInput input);

		void saveChart();
	}

	private static final int MARGIN_PX = 8;
	private static final int LEFT_PX = 280;
	private static final int[] ACROSS = { 46, 54 };
	private static final int[] DOWN = { 70, 30 };

	private final SheetModel model;
	private final ScrolledComposite scroll;
	private final Composite column;
	private final SheetForm form;
	private final Button openJob;
	private final Button another;
	private final Button saveChart;
	private final AdvicePart advice;
	private final EarlierSheets earlier;
	private final SheetCanvas canvas;
	private final VerdictButtons buttons;
	private final PressureCanvas chart;

	TestSheetPage(Composite parent, SheetModel model, Client client) {
		this.model = model;
		Composite all = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(all);
		new DeskBar(all);
		SashForm sash = new SashForm(all, SWT.HORIZONTAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		scroll = new ScrolledComposite(sash, SWT.V_SCROLL);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		column = new Composite(scroll, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).spacing(MARGIN_PX, MARGIN_PX).applyTo(column);
		scroll.setContent(column);
		form = fill(new SheetForm(column, client::workChanged, client::valueChanged, client::advisedSettings));
		Composite row = new Composite(column, SWT.NONE);
		RowLayout wrapped = new RowLayout();
		wrapped.marginLeft = 0;
		row.setLayout(wrapped);
		GridDataFactory.fillDefaults().grab(true, false).hint(LEFT_PX - 2 * MARGIN_PX, SWT.DEFAULT).applyTo(row);
		openJob = push(row, Messages.TestSheetPage_open, client::openAsJob);
		another = push(row, Messages.TestSheetPage_another, () -> client.open(TestSheetInput.NEW));
		saveChart = push(row, Messages.TestSheetPage_saveChart, client::saveChart);
		advice = fill(new AdvicePart(column));
		earlier = fill(new EarlierSheets(column, sheet -> client.open(new TestSheetInput(sheet.id()))));
		SashForm pictures = new SashForm(sash, SWT.VERTICAL);
		Composite upper = new Composite(pictures, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(upper);
		canvas = new SheetCanvas(upper, model, new SheetCanvas.Client() {
			@Override
			public void judge(Optional<Verdict> verdict) {
				client.judge(verdict);
			}

			@Override
			public void listens(boolean now) {
				client.listens(now);
			}

			@Override
			public String words() {
				return cellWords();
			}
		});
		GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
		buttons = new VerdictButtons(upper, verdict -> {
			client.judge(verdict);
			canvas.setFocus();
		});
		GridDataFactory.fillDefaults().grab(true, false).applyTo(buttons);
		chart = new PressureCanvas(pictures);
		pictures.setWeights(DOWN);
		sash.setWeights(ACROSS);
		scroll.addListener(SWT.Resize, event -> fit());
		sheetChanged();
	}

	private static <C extends Composite> C fill(C part) {
		GridDataFactory.fillDefaults().grab(true, false).applyTo(part);
		return part;
	}

	private static Button push(Composite parent, String text, Runnable action) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> action.run());
		return button;
	}

	SheetForm form() {
		return form;
	}

	/** The picture of the sheet. */
	public SheetCanvas canvas() {
		return canvas;
	}

	public AdvicePart advice() {
		return advice;
	}

	public PressureCanvas chart() {
		return chart;
	}

	void setCanOpen(boolean can) {
		openJob.setEnabled(can);
	}

	void sheetChanged() {
		boolean canJudge = model.isOpen() && StudioDesk.get().canKeep();
		if (model.isOpen()) {
			openJob.setEnabled(true);
		}
		another.setVisible(model.isOpen());
		saveChart.setEnabled(model.isOpen());
		buttons.show(model.isOpen() ? cellWords() : Messages.TestSheetPage_plan, canJudge);
		canvas.redraw();
		canvas.getAccessible().setFocus(org.eclipse.swt.accessibility.ACC.CHILDID_SELF);
	}

	private String cellWords() {
		TestSheet sheet = model.sheet();
		if (sheet == null) {
			return Messages.TestSheetPage_plan;
		}
		return NLS.bind(Messages.TestSheetPage_cell, new Object[] { model.at(),
				SettingsWords.of(sheet.settings(model.at()), model.machine()),
				sheet.verdict(model.at()).map(Verdict::text).orElse(Messages.TestSheetPage_unjudged) });
	}

	void advise(Advising.Answer answer, TestSheet sheet, Optional<Reorder> before) {
		advice.show(answer.advice(), answer.work(), sheet, model.layout() == null ? 0 : model.layout().metres(), before);
		chart.show(answer.chart().orElse(null));
		fit();
	}

	void earlier(DeskState state, String stock) {
		earlier.show(state, stock);
	}

	private void fit() {
		int width = Math.max(LEFT_PX, scroll.getClientArea().width);
		column.layout(true, true);
		scroll.setMinHeight(column.computeSize(width, SWT.DEFAULT).y);
	}

	void setFocus(boolean onPicture) {
		if (onPicture) {
			canvas.setFocus();
		} else {
			form.setFocus();
		}
	}
}
