package org.frisket.imports.svg;

import java.util.List;

/**
 * Drawings after the rules of the SVG specification (SVG 1.1, second edition, and the chapters on paths and
 * coordinate systems of SVG 2): what a number, an arc, a box, a style or a link may look like. Each fills part of a sheet
 * of 100 mm. Where librsvg 2.54 leaves the specification they are left out here and stand in SvgImporterTest: sizes that a
 * use gives a picture, a symbol cut at its frame, a clip path that is clipped, points of an odd number.
 */
final class Drawings {

	private Drawings() {
	}

	/** Section 8.3: commands run together, numbers without blanks, pairs that repeat. */
	static final List<String> PATHS = List.of( //
			"<path d='M10,10L90,10,90,90,10,90z'/>", "<path d='M10 10 90 10 90 40 10 40z m5 50 80 0 0 30-80 0'/>",
			"<path d='m10 10 80 0 0 80-80 0z'/>", "<path d='M10-.5e1L90,1.e1 5e1.9e2Z'/>",
			"<path d='M.5.5.5 90.5 90.5 90.5z'/>", "<path d='\n\tM\n10\t10 H90 80 V90 H 10\r\n Z'/>",
			"<path d='M10 10h80v80h-80zl0 0M30 30v40h40v-40z'/>", "<path d='M50 10l40 80h-80zh0zm-10 60h20v10h-20z' fill-rule='evenodd'/>",
			"<path d='M10 50S30 10 50 50 70 90 90 50V95H10z'/>", "<path d='M10 50s20-40 40 0 20 40 40 0v45h-80z'/>",
			"<path d='M10 50T50 10 90 50 50 90z'/>", "<path d='M10 50Q30 0 50 50t40 0V90H10z'/>",
			"<path d='M10 40L50 40T90 40V90H10z'/>", "<path d='M10 40C10 40 20 10 50 40Q60 60 70 40S90 0 90 40V90H10z'/>",
			"<path d='M10 10H90V90H10' />", "<path d='M10 90 50 10 90 90'/><path d='M1 1'/><path d=''/>");

	/** Appendix F.6: radii too small are grown, zero ones make lines, signs do not count, flags need no blanks. */
	static final List<String> ARCS = List.of( //
			"<path d='M10 50A1 1 0 0 1 90 50z'/>", "<path d='M10 50A10 5 30 0 0 90 50z'/>",
			"<path d='M10 50A0 30 0 0 1 90 50V90H10z'/>", "<path d='M10 50A-40-30 0 0 1 90 50z'/>",
			"<path d='M10 50a40 30 0 1190 0z' transform='scale(.8)'/>", "<path d='M10 50a40,40 0 01 40-40 40 40 0 0140 40z'/>",
			"<path d='M10 50A40 30 0 0 1 10 50L90 60 90 90z'/>", "<path d='M30 50A25 12 750 1 0 70 60z'/>",
			"<path d='M50 50 a25,25 -30 0,1 50,-25 l 0 50 z'/>", "<path d='M20 80A60 60 0 0 0 80 20A60 60 0 0 0 20 80'/>");

	/** Section 9: shapes with odd or missing measures, in any unit. */
	static final List<String> SHAPES = List.of( //
			"<rect x='10' y='10' width='60' height='30' rx='10'/>", "<rect x='10' y='10' width='60' height='30' ry='10'/>",
			"<rect x='10' y='10' width='60' height='30' rx='500' ry='4'/>", "<rect x='10' y='10' width='60' height='30' rx='0' ry='9'/>",
			"<rect width='50%' height='25%' x='10%' y='1e1'/>", "<circle cx='50%' cy='50%' r='30%'/>",
			"<circle r='40'/><ellipse cx='70' cy='70' rx='20' ry='9'/>", "<polygon points='10,10 90 10,90,90 -1e-1,90'/>",
			"<polyline points='10,10,90,10,50,90'/>",
			"<g transform='scale(.2)'><rect x='1cm' y='10mm' width='2in' height='72pt'/></g>",
			"<g transform='scale(.3)'><rect x='2pc' y='40px' width='80pt' height='3em' font-size='30'/></g>");

	/** Section 7: boxes in boxes, lists of transforms with any separators. */
	static final List<String> FRAMES = List.of( //
			"<svg x='10' y='10' width='80' height='40' viewBox='0 0 10 10'><rect width='10' height='10'/></svg>",
			"<svg x='10' y='10' width='80' height='40' viewBox='-5,-5,10,10' preserveAspectRatio='xMaxYMin'><circle r='5'/></svg>",
			"<svg x='10' y='10' width='80' height='40' viewBox='0 0 10 10' preserveAspectRatio='xMidYMid slice'><circle cx='5' cy='5' r='5'/></svg>",
			"<svg x='10' y='10' width='80' height='40' viewBox='0 0 10 10' preserveAspectRatio='none'><circle cx='5' cy='5' r='5'/></svg>",
			"<svg x='10' y='10' width='40' height='40' overflow='visible'><rect x='-5' y='-5' width='80' height='20'/></svg>",
			"<svg x='20' y='20'><rect width='50%' height='50%'/></svg>",
			"<g transform='translate(50,50)rotate(45),scale(.5 , 1)'><rect x='-30' y='-30' width='60' height='60'/></g>",
			"<g transform='matrix(1 0 .5 1 0 10) translate(10)'><rect width='40' height='40'/></g>",
			"<rect width='40' height='20' transform=' rotate( -30 , 50 , 50 ) translate(30,40) '/>");

	/** Section 5: what is used, shown, chosen, hidden. */
	static final List<String> STRUCTURE = List.of( //
			"<defs><rect id='a' width='30' height='30'/></defs><use href='#a' x='50'/><use xlink:href='#a' y='50' transform='rotate(10)'/>",
			"<symbol id='s' viewBox='0 0 10 20'><rect width='10' height='20'/></symbol><use href='#s' x='10' y='10' width='60' height='60'/>",
			"<g id='g'><rect id='r' width='20' height='20'/><use href='#r' x='30'/></g><use href='#g' y='40'/>",
			"<switch><rect requiredExtensions='http://example.invalid/x' width='90' height='90'/><rect width='30' height='60'/><rect width='99' height='99'/></switch>",
			"<switch><g systemLanguage='xx'><rect width='90' height='90'/></g><circle cx='50' cy='50' r='20'/></switch>",
			"<rect width='60' height='30'/><marker id='m'><rect width='99' height='99'/></marker><pattern id='p'><rect width='99' height='99'/></pattern>",
			"<a href='#x'><rect x='10' y='10' width='50' height='50'/></a><foreignObject width='99' height='99'/>",
			"<g opacity='1'><rect width='50' height='50' visibility='collapse'/><rect x='50' width='50' height='50' style='display:inline'/></g>",
			"<g style='display:none'><rect width='90' height='90' style='display:inline'/></g><rect width='30' height='30'/>");

	/** Section 6 and CSS 2.1, section 6.4: which rule weighs most. */
	static final List<String> STYLES = List.of( //
			"<style>rect{fill:none}</style><rect width='50' height='50' style='fill:black'/><rect x='50' width='50' height='50' fill='black'/>",
			"<style>#a{fill:none}.b{fill:black}</style><rect id='a' class='b' width='50' height='50'/><rect class='b' x='50' width='50' height='50'/>",
			"<style>.b{fill:black}.c{fill:none}</style><rect class='c b' width='50' height='50'/><rect class='b' y='50' width='50' height='50'/>",
			"<style>g rect{fill:none}rect.x{fill:black}</style><g><rect class='x' width='50' height='50'/><rect y='50' width='50' height='50'/></g>",
			"<style>rect{fill:none!important}</style><rect width='50' height='50' style='fill:black'/><circle cx='70' cy='70' r='20'/>",
			"<style>*{fill:none}circle{fill:black}</style><rect width='50' height='50'/><circle cx='70' cy='70' r='20'/>",
			"<style>g>rect{fill:none}</style><g><rect width='50' height='50'/><g><a><rect y='50' width='50' height='50'/></a></g></g>",
			"<g fill='none'><rect width='50' height='50'/><rect y='50' width='50' height='50' fill='inherit'/><g fill='black'><circle cx='70' cy='70' r='20'/></g></g>",
			"<g color='black' fill='none'><rect width='50' height='50' fill='currentColor'/></g>",
			"<g fill-rule='evenodd'><path d='M10 10H90V90H10zM30 30H70V70H30z'/></g>");

	/** Section 11.4: joins, caps, dashes. */
	static final List<String> STROKES = List.of( //
			"<path d='M20 80L50 20L80 80' fill='none' stroke='black' stroke-width='10' stroke-linejoin='miter' stroke-miterlimit='1.5'/>",
			"<path d='M20 80L50 20L80 80' fill='none' stroke='black' stroke-width='10' stroke-miterlimit='9'/>",
			"<path d='M20 80L50 20L80 80z' fill='none' stroke='black' stroke-width='10' stroke-linejoin='round'/>",
			"<path d='M20 80L50 20L80 80' fill='none' stroke='black' stroke-width='10' stroke-linejoin='bevel' stroke-linecap='square'/>",
			"<path d='M10 30H90M10 60H90' fill='none' stroke='black' stroke-width='8' stroke-dasharray='20,5 10'/>",
			"<path d='M10 30H90' fill='none' stroke='black' stroke-width='8' stroke-dasharray='15' stroke-dashoffset='-4' stroke-linecap='round'/>",
			"<rect x='20' y='20' width='60' height='60' fill='none' stroke='black' stroke-width='6' stroke-dasharray='27 10' stroke-dashoffset='30'/>",
			"<path d='M10 30H90' fill='none' stroke='black' stroke-width='8' stroke-dasharray='0'/>",
			"<g transform='scale(1 3)'><circle cx='50' cy='15' r='10' fill='none' stroke='black' stroke-width='4'/></g>",
			"<path d='M20 20H80V80H20z' fill='none' stroke='black' stroke-width='10%'/>",
			"<path d='M30 20zM70 20h0' stroke='black' stroke-width='20' stroke-linecap='square'/>",
			"<path d='M30 30zM70 50V70' fill='none' stroke='black' stroke-width='20' stroke-linecap='round'/>");

	/** Section 14: what is cut away. */
	static final List<String> CLIPS = List.of( //
			"<clipPath id='c'><path d='M10 10H90V90H10zM30 30H70V70H30z' clip-rule='evenodd'/></clipPath><rect width='100' height='100' clip-path='url(#c)'/>",
			"<clipPath id='c'><use href='#u'/></clipPath><defs><circle id='u' cx='50' cy='50' r='30'/></defs><rect width='100' height='50' clip-path='url(#c)'/>",
			"<clipPath id='c' transform='translate(20 20)'><rect width='40' height='40'/></clipPath><g transform='scale(1.5)'><rect width='60' height='60' clip-path='url(#c)'/></g>",
			"<clipPath id='c'/><rect width='90' height='90' clip-path='url(#c)'/><rect width='30' height='30'/>",
			"<mask id='m' x='0' y='0' width='1' height='1'><circle cx='50' cy='50' r='40' fill='white'/></mask><rect x='10' y='10' width='60' height='60' mask='url(#m)'/>",
			"<mask id='m' maskContentUnits='objectBoundingBox'><rect width='.5' height='1' fill='white'/></mask><rect x='10' y='10' width='60' height='60' mask='url(#m)'/>");

	/** The frame of the whole file; always a square of 100 mm. */
	static final List<String> SHEETS = List.of( //
			"viewBox='0 0 200 100'><rect width='200' height='100'/>",
			"viewBox='0 0 200 100' preserveAspectRatio='xMidYMid slice'><circle cx='100' cy='50' r='50'/>",
			"viewBox='0 0 200 100' preserveAspectRatio='xMinYMax meet'><rect width='100' height='100'/>",
			"viewBox='-50 -50 100 100'><circle r='40'/>", "><rect x='1cm' y='10mm' width='50mm' height='1in'/>",
			"><rect width='50%' height='25%'/>", "viewBox='0 0 100 400' preserveAspectRatio='none'><circle cx='50' cy='200' r='50'/>");
}
