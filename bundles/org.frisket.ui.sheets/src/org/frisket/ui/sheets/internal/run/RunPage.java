package org.frisket.ui.sheets.internal.run;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.frisket.run.play.LegLine;
import org.frisket.run.play.Moment;
import org.frisket.run.play.Playback;
import org.frisket.run.play.Player;
import org.frisket.run.play.RunWords;
import org.frisket.ui.OperationName;
import org.frisket.ui.material.internal.trials.SettingsWords;

/** What is seen of a run: what to mind, the picture with what moves in it, and the legs beside or below. */
final class RunPage extends Composite {

	/** What is asked for here, beside what the picture and the side ask for. */
	interface Client extends RunCanvas.Client, RunSide.Client {

		/** Show another sheet. @param index among those that were offered */
		void sheet(int index);

		/** Stop working the run out, or begin again. */
		void stopOrBegin();
	}

	private static final int SPACE_PX = 4;
	private static final int[] BESIDE = { 58, 42 };
	private static final int[] BELOW = { 55, 45 };

	private final Player player;
	private final RunNotices notices;
	private final Composite working;
	private final Label workingWords;
	private final Button workingButton;
	private final SashForm halves;
	private final Combo sheets;
	private final RunCanvas canvas;
	private final ScrubBar scrub;
	private final Label time;
	private final RunBar bar;
	private final Label words;
	private final RunSide side;

	RunPage(Composite parent, Player player, RunActions actions, RunKeys keys, Client client) {
		super(parent, SWT.NONE);
		this.player = player;
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, SPACE_PX).applyTo(this);
		notices = new RunNotices(this, true);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(notices);
		notices.setVisible(false);
		working = new Composite(this, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(working);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(working);
		working.setVisible(false);
		workingWords = new Label(working, SWT.WRAP);
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(SPACE_PX, SWT.DEFAULT)
				.applyTo(workingWords);
		workingButton = new Button(working, SWT.PUSH);
		workingButton.addListener(SWT.Selection, event -> client.stopOrBegin());
		halves = new SashForm(this, SWT.HORIZONTAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
		Composite picture = new Composite(halves, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(SPACE_PX, SPACE_PX).applyTo(picture);
		sheets = new Combo(picture, SWT.READ_ONLY);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(sheets);
		sheets.addListener(SWT.Selection, event -> client.sheet(sheets.getSelectionIndex()));
		sheets.setVisible(false);
		canvas = new RunCanvas(picture, player, client);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
		Composite clock = new Composite(picture, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(clock);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(clock);
		scrub = new ScrubBar(clock, player, client);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(scrub);
		time = new Label(clock, SWT.NONE);
		GridDataFactory.swtDefaults().applyTo(time);
		bar = new RunBar(picture, actions, keys);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
		words = new Label(picture, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(SPACE_PX, 2 * words.computeSize(SWT.DEFAULT, SWT.DEFAULT).y)
				.applyTo(words);
		side = new RunSide(halves, client);
		halves.setWeights(BESIDE);
		addListener(SWT.Resize, event -> turn());
	}

	/** The side stands where there is more room. */
	private void turn() {
		int orientation = getSize().x > getSize().y ? SWT.HORIZONTAL : SWT.VERTICAL;
		if (halves.getOrientation() != orientation) {
			halves.setOrientation(orientation);
			halves.setWeights(orientation == SWT.HORIZONTAL ? BESIDE : BELOW);
		}
	}

	@Override
	public boolean setFocus() {
		return canvas.setFocus();
	}

	RunSide side() {
		return side;
	}

	RunCanvas canvas() {
		return canvas;
	}

	ScrubBar scrub() {
		return scrub;
	}

	/** What the machine is at, in words. */
	String words() {
		return words.getText();
	}

	/** Elapsed and remaining time. */
	String time() {
		return time.getText();
	}

	/** A list to choose from where there are several. @param index of the one that is shown */
	void showSheets(List<String> names, int index) {
		if (!List.of(sheets.getItems()).equals(names)) {
			sheets.setItems(names.toArray(String[]::new));
		}
		sheets.select(index);
		show(sheets, names.size() > 1);
	}

	/** Null for none. */
	void show(SheetRun run) {
		notices.show(run);
		canvas.show(run);
		side.show(run);
		refresh();
	}

	/** @param percent of the work that is done; below 0 if nothing is worked out @param trouble empty for none */
	void showWork(int percent, String trouble) {
		boolean runs = percent >= 0;
		String text = runs ? NLS.bind(Messages.RunView_working, percent) : trouble;
		if (!text.equals(workingWords.getText())) {
			workingWords.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		}
		String label = runs ? Messages.RunView_stop : Messages.RunView_again;
		if (!label.equals(workingButton.getText())) {
			workingButton.setText(label);
			working.requestLayout();
		}
		show(working, !text.isEmpty());
	}

	private static void show(Control control, boolean shown) {
		GridData data = (GridData) control.getLayoutData();
		if (data.exclude == shown) {
			data.exclude = !shown;
			control.setVisible(shown);
			control.requestLayout();
		}
	}

	/** All that follows the player. */
	void refresh() {
		bar.refresh(player);
		tick();
	}

	/** No more than the time has changed. */
	void tick() {
		tickTime();
		canvas.refresh();
		scrub.redraw();
		Playback playback = player.playback();
		if (playback == null || playback.legs().isEmpty()) {
			words.setText(""); //$NON-NLS-1$
			return;
		}
		Moment now = player.now();
		side.legs().light(now.leg());
		String said = words(playback, now);
		if (!said.equals(words.getText())) {
			words.setText(said);
		}
	}

	private void tickTime() {
		String text = player.playback() == null ? "" //$NON-NLS-1$
				: NLS.bind(Messages.RunPage_time, RunWords.clock(player.seconds()),
						RunWords.clock(Math.ceil(player.playback().seconds() - player.seconds())));
		if (!text.equals(time.getText())) {
			boolean wider = text.length() != time.getText().length();
			time.setText(text);
			if (wider) {
				time.requestLayout();
			}
		}
	}

	private static String words(Playback playback, Moment now) {
		LegLine leg = playback.legs().get(now.leg());
		String tool = ToolWords.of(leg.work().tool());
		return NLS.bind(Messages.RunView_now,
				new Object[] { RunWords.state(playback, now, tool), RunWords.metres(playback.mm(now)), RunWords.metres(playback.mm()),
						OperationName.of(LinePen.kind(leg.stage())), tool,
						SettingsWords.of(leg.work().settings(), playback.run().machine()) }).replace("&", "&&"); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
