package org.frisket.typography.internal.source;

/** How near two names are to each other. */
public final class Likeness {

	private Likeness() {
	}

	/** Whether one may have been typed for the other: one holds the other, or at most every third letter differs. */
	public static boolean areAlike(String a, String b) {
		if (a.isEmpty() || b.isEmpty()) {
			return false;
		}
		return a.contains(b) || b.contains(a) || edits(a, b) <= Math.max(a.length(), b.length()) / 3;
	}

	/** For sorting: the number of edits, those names first that hold the other. */
	public static int distance(String a, String b) {
		return a.contains(b) || b.contains(a) ? Math.abs(a.length() - b.length()) - 1000 : edits(a, b);
	}

	/** The least number of letters put in, left out or changed (Levenshtein). */
	private static int edits(String a, String b) {
		int[] row = new int[b.length() + 1];
		for (int j = 0; j < row.length; j++) {
			row[j] = j;
		}
		for (int i = 1; i <= a.length(); i++) {
			int diagonal = row[0];
			row[0] = i;
			for (int j = 1; j < row.length; j++) {
				int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
				diagonal = row[j];
				row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
			}
		}
		return row[b.length()];
	}
}
