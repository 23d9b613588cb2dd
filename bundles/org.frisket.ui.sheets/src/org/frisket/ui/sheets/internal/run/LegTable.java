package org.frisket.ui.sheets.internal.run;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.frisket.run.play.LegLine;
import org.frisket.run.play.Playback;
import org.frisket.run.play.RunWords;
import org.frisket.toolpath.Stage;
import org.frisket.ui.OperationName;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.material.internal.trials.SettingsWords;

/** The legs of a run, one a line: what is done, with which tool and settings, and how much of it. */
final class LegTable {

	private static final int SAMPLE_WIDE_PX = 28;
	private static final int SAMPLE_HIGH_PX = 14;

	private final Table table;
	private final Map<Stage, Image> samples = new EnumMap<>(Stage.class);

	/** @param chosen told the number of a leg, from 0, that a person goes to */
	LegTable(Composite parent, IntConsumer chosen) {
		table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
		table.setHeaderVisible(true);
		for (String name : new String[] { Messages.LegTable_leg, Messages.LegTable_operation, Messages.LegTable_tool,
				Messages.LegTable_settings, Messages.LegTable_strokes, Messages.LegTable_line, Messages.LegTable_time }) {
			new TableColumn(table, SWT.NONE).setText(name);
		}
		table.addListener(SWT.Selection, event -> chosen.accept(table.getSelectionIndex()));
		table.addListener(SWT.Dispose, event -> samples.values().forEach(Image::dispose));
	}

	Table table() {
		return table;
	}

	/** Null for none. */
	void show(Playback playback) {
		table.setRedraw(false);
		table.removeAll();
		if (playback != null) {
			List<LegLine> legs = playback.legs();
			for (int i = 0; i < legs.size(); i++) {
				show(playback, legs.get(i), i);
			}
		}
		for (TableColumn column : table.getColumns()) {
			column.pack();
		}
		table.setRedraw(true);
	}

	private void show(Playback playback, LegLine leg, int index) {
		TableItem item = new TableItem(table, SWT.NONE);
		item.setText(new String[] { leg.stop() ? NLS.bind(Messages.LegTable_afterStop, index + 1) : String.valueOf(index + 1),
				OperationName.of(LinePen.kind(leg.stage())), ToolWords.of(leg.work().tool()),
				SettingsWords.of(leg.work().settings(), playback.run().machine()), String.valueOf(leg.strokes()),
				RunWords.metres(leg.mm()), RunWords.duration(leg.seconds()) });
		item.setImage(1, samples.computeIfAbsent(leg.stage(), this::sample));
	}

	private Image sample(Stage stage) {
		Image image = new Image(table.getDisplay(), SAMPLE_WIDE_PX, SAMPLE_HIGH_PX);
		GC gc = new GC(image);
		gc.setBackground(ThemeColour.BENCH_SHEET.colour());
		gc.fillRectangle(0, 0, SAMPLE_WIDE_PX, SAMPLE_HIGH_PX);
		Path path = new Path(table.getDisplay());
		path.moveTo(2, SAMPLE_HIGH_PX / 2f);
		path.lineTo(SAMPLE_WIDE_PX - 2, SAMPLE_HIGH_PX / 2f);
		LinePen.solid(gc, path, stage);
		path.dispose();
		gc.dispose();
		return image;
	}

	/** Lights the leg that is under way. */
	void light(int leg) {
		if (leg < table.getItemCount() && table.getSelectionIndex() != leg) {
			table.setSelection(leg);
		}
	}
}
