package org.frisket.print.picture;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which page of a PDF file is meant, from 1. In a media type it is a parameter of ours, {@code application/pdf;page=2}; in an
 * address it is the fragment that RFC 8118 gives to PDF, {@code art/tags.pdf#page=2}. Where nothing is said, it is the first.
 */
public final class ArtPage {

	private static final Pattern PARAMETER = Pattern.compile(
			";\\s*page\\s*=\\s*\"?([0-9]{1,9})(?![0-9])\"?", Pattern.CASE_INSENSITIVE);
	private static final Pattern FRAGMENT = Pattern.compile("#(?:[^#]*&)?page=([0-9]{1,9})(?:&[^#]*)?$");

	private ArtPage() {
	}

	/** @param mediaType null for none */
	public static int ofMediaType(String mediaType) {
		return number(PARAMETER, mediaType);
	}

	/** @param link null for none */
	public static int ofLink(String link) {
		return number(FRAGMENT, link);
	}

	/** The address of the file, whichever page is meant. */
	public static String fileOf(String link) {
		Matcher matcher = FRAGMENT.matcher(link);
		return matcher.find() ? link.substring(0, matcher.start()) : link;
	}

	public static String mediaType(PictureFormat format, int page) {
		return page > 1 ? format.mediaType() + ";page=" + page : format.mediaType();
	}

	public static String link(String file, int page) {
		return page > 1 ? file + "#page=" + page : file;
	}

	private static int number(Pattern pattern, String text) {
		Matcher matcher = text == null ? null : pattern.matcher(text);
		return matcher != null && matcher.find() ? Math.max(1, Integer.parseInt(matcher.group(1))) : 1;
	}
}
