package org.frisket.orders.paper;

import java.util.Arrays;
import java.util.stream.Collectors;

import org.frisket.model.Job;

/** What stands at the head of papers. */
public final class Titles {

	private static final String BETWEEN = " · ";

	private Titles() {
	}

	/** The paper's kind with the number and the title of its job, as far as it has them. */
	public static String of(String kind, Job job) {
		return joined(kind, job.getNumber(), job.getTitle() == null ? null : job.getTitle().lines().findFirst().orElse(""));
	}

	/** With a dot between them. @param texts of which some may be null or empty */
	public static String joined(String... texts) {
		return Arrays.stream(texts).filter(text -> text != null && !text.isBlank()).collect(Collectors.joining(BETWEEN));
	}
}
