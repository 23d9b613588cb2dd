package org.frisket.ui.sheets.internal.run;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.frisket.run.play.Player;

/** What moves in the run by the mouse. */
final class RunBar extends Composite {

	private final LocalResourceManager images;
	private final RunActions actions;
	private final RunKeys keys;
	private final ToolBar bar;
	private final ToolItem play;
	private final ToolItem speed;
	private final ToolItem travel;
	private final ToolItem calm;

	RunBar(Composite parent, RunActions actions, RunKeys keys) {
		super(parent, SWT.NONE);
		this.actions = actions;
		this.keys = keys;
		images = new LocalResourceManager(JFaceResources.getResources(), this);
		setLayout(new FillLayout());
		bar = new ToolBar(this, SWT.FLAT | SWT.RIGHT);
		item(SWT.PUSH, RunIcon.PREVIOUS_TOOL, Messages.RunBar_previousTool, "previousTool", actions::previousTool); //$NON-NLS-1$
		item(SWT.PUSH, RunIcon.PREVIOUS_PART, Messages.RunBar_previousPart, "previousPart", actions::previousPart); //$NON-NLS-1$
		item(SWT.PUSH, RunIcon.PREVIOUS_STROKE, Messages.RunBar_previousStroke, "previousStroke", actions::previousStroke); //$NON-NLS-1$
		play = item(SWT.PUSH, RunIcon.PLAY, Messages.RunBar_play, "play", actions::play); //$NON-NLS-1$
		item(SWT.PUSH, RunIcon.NEXT_STROKE, Messages.RunBar_nextStroke, "nextStroke", actions::nextStroke); //$NON-NLS-1$
		item(SWT.PUSH, RunIcon.NEXT_PART, Messages.RunBar_nextPart, "nextPart", actions::nextPart); //$NON-NLS-1$
		item(SWT.PUSH, RunIcon.NEXT_TOOL, Messages.RunBar_nextTool, "nextTool", actions::nextTool); //$NON-NLS-1$
		new ToolItem(bar, SWT.SEPARATOR);
		speed = new ToolItem(bar, SWT.PUSH);
		speed.setToolTipText(keys.with(Messages.RunBar_speed, "faster")); //$NON-NLS-1$
		speed.addListener(SWT.Selection, event -> actions.nextSpeed());
		travel = item(SWT.CHECK, RunIcon.TRAVEL, Messages.RunBar_travel, "travel", actions::toggleTravel); //$NON-NLS-1$
		calm = item(SWT.CHECK, RunIcon.CALM, Messages.RunBar_calm, "calm", actions::toggleCalm); //$NON-NLS-1$
	}

	private ToolItem item(int style, RunIcon icon, String words, String command, Runnable action) {
		ToolItem item = new ToolItem(bar, style);
		item.setImage(images.create(icon.descriptor()));
		item.setToolTipText(keys.with(words, command));
		item.addListener(SWT.Selection, event -> action.run());
		return item;
	}

	/** As the player is now. */
	void refresh(Player player) {
		boolean playing = player.isPlaying();
		play.setImage(images.create((playing ? RunIcon.PAUSE : RunIcon.PLAY).descriptor()));
		play.setToolTipText(keys.with(playing ? Messages.RunBar_pause : Messages.RunBar_play, "play")); //$NON-NLS-1$
		speed.setText(NLS.bind(Messages.RunBar_times, player.speed()));
		travel.setSelection(actions.isTravelShown());
		calm.setSelection(player.isCalm());
	}
}
