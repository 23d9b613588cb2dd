package org.frisket.ui.sheets.internal.run;

import org.frisket.run.play.Leap;
import org.frisket.run.play.Player;

/** What keys and buttons do with the run that is shown. */
public final class RunActions {

	/** What follows what was done. */
	interface Client {

		/** The player is elsewhere, or plays now, or no more. */
		void moved();

		/** Asks where to, and writes the run sheet. */
		void writeSheet();
	}

	private final Player player;
	private final Client client;
	private boolean travel = RunSetup.showsTravel();

	RunActions(Player player, Client client) {
		this.player = player;
		this.client = client;
		player.setCalm(RunSetup.isCalm());
	}

	/** Plays, or stays where it is. */
	public void play() {
		player.toggle();
		client.moved();
	}

	public void faster() {
		player.faster();
		client.moved();
	}

	public void slower() {
		player.slower();
		client.moved();
	}

	/** The next speed, after the fastest the slowest. */
	public void nextSpeed() {
		player.nextSpeed();
		client.moved();
	}

	public void nextStroke() {
		next(Leap.STROKE);
	}

	public void previousStroke() {
		previous(Leap.STROKE);
	}

	public void nextPart() {
		next(Leap.PART);
	}

	public void previousPart() {
		previous(Leap.PART);
	}

	public void nextTool() {
		next(Leap.TOOL);
	}

	public void previousTool() {
		previous(Leap.TOOL);
	}

	private void next(Leap leap) {
		player.pause();
		player.next(leap);
		client.moved();
	}

	private void previous(Leap leap) {
		player.pause();
		player.previous(leap);
		client.moved();
	}

	/** Shows where the tool goes lifted, or does not. */
	public void toggleTravel() {
		travel = !travel;
		RunSetup.showTravel(travel);
		client.moved();
	}

	boolean isTravelShown() {
		return travel;
	}

	/** From stroke to stroke, or gliding. */
	public void toggleCalm() {
		player.setCalm(!player.isCalm());
		RunSetup.setCalm(player.isCalm());
		client.moved();
	}

	public void writeSheet() {
		client.writeSheet();
	}
}
