package org.frisket.run.play;

/** Goes through a run as a clock that somebody else winds: at a speed, forwards, and by jumps. */
public final class Player {

	private static final int[] SPEEDS = { 1, 4, 16, 64 };

	private Playback playback;
	private double seconds;
	private boolean playing;
	private int speed;
	private boolean calm;

	/** Shows another run from its start; null for none. */
	public void show(Playback shown) {
		playback = shown;
		seconds = 0;
		playing = false;
	}

	/** Shows a run that has come out otherwise, about where the last one was. */
	public void replace(Playback shown) {
		double share = playback == null || playback.seconds() == 0 ? 0 : seconds / playback.seconds();
		boolean played = playing;
		show(shown);
		if (shown != null) {
			seconds = share * shown.seconds();
			playing = played;
		}
	}

	/** Null for none. */
	public Playback playback() {
		return playback;
	}

	public boolean isPlaying() {
		return playing;
	}

	/** By how much faster than the machine. */
	public int speed() {
		return SPEEDS[speed];
	}

	public void faster() {
		speed = Math.min(SPEEDS.length - 1, speed + 1);
	}

	public void slower() {
		speed = Math.max(0, speed - 1);
	}

	/** To the next speed; after the fastest comes the slowest. */
	public void nextSpeed() {
		speed = (speed + 1) % SPEEDS.length;
	}

	/** @param steps whether strokes come whole, for those who want less motion */
	public void setCalm(boolean steps) {
		calm = steps;
	}

	public boolean isCalm() {
		return calm;
	}

	/** Plays, or stays where it is; from the end it begins anew. */
	public void toggle() {
		if (playback == null || playback.size() == 0) {
			return;
		}
		playing = !playing;
		if (playing && seconds >= playback.seconds()) {
			seconds = 0;
		}
	}

	public void pause() {
		playing = false;
	}

	/** @param elapsed seconds of the day that have gone by; nothing happens while it does not play */
	public void advance(double elapsed) {
		if (playing) {
			seek(seconds + elapsed * speed());
			playing = seconds < playback.seconds();
		}
	}

	/** Goes to a time in seconds, or to the end that is nearer to it. */
	public void seek(double time) {
		if (playback != null) {
			seconds = Math.max(0, Math.min(playback.seconds(), time));
		}
	}

	public void next(Leap leap) {
		if (playback != null) {
			seek(playback.next(leap, seconds));
		}
	}

	public void previous(Leap leap) {
		if (playback != null) {
			seek(playback.previous(leap, seconds));
		}
	}

	/** In seconds from the start of the run. */
	public double seconds() {
		return seconds;
	}

	/** What is to be shown now. Only while there is a run. */
	public Moment now() {
		// by the clock even then: the numbers must not jump ahead of it
		return playback.at(calm && playing ? playback.settled(seconds) : seconds);
	}
}
