/**
 */
package org.frisket.model;

import java.util.List;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Wording</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An element made of text.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Wording#getText <em>Text</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getFont <em>Font</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getHeight <em>Height</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getLineSpacing <em>Line Spacing</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getTracking <em>Tracking</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getAlignment <em>Alignment</em>}</li>
 *   <li>{@link org.frisket.model.Wording#isKerning <em>Kerning</em>}</li>
 *   <li>{@link org.frisket.model.Wording#isLigatures <em>Ligatures</em>}</li>
 *   <li>{@link org.frisket.model.Wording#isJoined <em>Joined</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getTouch <em>Touch</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getFeatures <em>Features</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getAxes <em>Axes</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getWordSpacing <em>Word Spacing</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getMeasure <em>Measure</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getSpans <em>Spans</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getNudges <em>Nudges</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getFlow <em>Flow</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getArcRadius <em>Arc Radius</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getArcAngle <em>Arc Angle</em>}</li>
 *   <li>{@link org.frisket.model.Wording#isArcInside <em>Arc Inside</em>}</li>
 *   <li>{@link org.frisket.model.Wording#isArcInward <em>Arc Inward</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getPath <em>Path</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getPathStart <em>Path Start</em>}</li>
 *   <li>{@link org.frisket.model.Wording#isPathReversed <em>Path Reversed</em>}</li>
 *   <li>{@link org.frisket.model.Wording#isPathHanging <em>Path Hanging</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getBoxWidth <em>Box Width</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getBoxHeight <em>Box Height</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getEmbolden <em>Embolden</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getBars <em>Bars</em>}</li>
 *   <li>{@link org.frisket.model.Wording#isTieMarks <em>Tie Marks</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getTieWidth <em>Tie Width</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getStencil <em>Stencil</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getPenStyle <em>Pen Style</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getHatchSpacing <em>Hatch Spacing</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getHatchAngle <em>Hatch Angle</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getHatchInset <em>Hatch Inset</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getBridges <em>Bridges</em>}</li>
 *   <li>{@link org.frisket.model.Wording#getIslands <em>Islands</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Wording extends Element {
	/**
	 * Returns the value of the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it says; lines are parted by line feeds.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Text</em>' attribute.
	 * @see #setText(String)
	 * @generated
	 */
	String getText();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getText <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Text</em>' attribute.
	 * @see #getText()
	 * @generated
	 */
	void setText(String value);

	/**
	 * Returns the value of the '<em><b>Font</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The typeface; null if none is chosen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Font</em>' containment reference.
	 * @see #setFont(FontRef)
	 * @generated
	 */
	FontRef getFont();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getFont <em>Font</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Font</em>' containment reference.
	 * @see #getFont()
	 * @generated
	 */
	void setFont(FontRef value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of a capital H in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(double)
	 * @generated
	 */
	double getHeight();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(double value);

	/**
	 * Returns the value of the '<em><b>Line Spacing</b></em>' attribute.
	 * The default value is <code>"1.6"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distance of baselines as a multiple of the height.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Line Spacing</em>' attribute.
	 * @see #setLineSpacing(double)
	 * @generated
	 */
	double getLineSpacing();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getLineSpacing <em>Line Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Line Spacing</em>' attribute.
	 * @see #getLineSpacing()
	 * @generated
	 */
	void setLineSpacing(double value);

	/**
	 * Returns the value of the '<em><b>Tracking</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Added after every letter, in mm; negative sets tighter.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tracking</em>' attribute.
	 * @see #setTracking(double)
	 * @generated
	 */
	double getTracking();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getTracking <em>Tracking</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tracking</em>' attribute.
	 * @see #getTracking()
	 * @generated
	 */
	void setTracking(double value);

	/**
	 * Returns the value of the '<em><b>Alignment</b></em>' attribute.
	 * The default value is <code>"left"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.Alignment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where shorter lines stand beside longer ones.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Alignment</em>' attribute.
	 * @see org.frisket.model.Alignment
	 * @see #setAlignment(Alignment)
	 * @generated
	 */
	Alignment getAlignment();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getAlignment <em>Alignment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Alignment</em>' attribute.
	 * @see org.frisket.model.Alignment
	 * @see #getAlignment()
	 * @generated
	 */
	void setAlignment(Alignment value);

	/**
	 * Returns the value of the '<em><b>Kerning</b></em>' attribute.
	 * The default value is <code>"true"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the pair distances of the font are used.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kerning</em>' attribute.
	 * @see #setKerning(boolean)
	 * @generated
	 */
	boolean isKerning();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#isKerning <em>Kerning</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kerning</em>' attribute.
	 * @see #isKerning()
	 * @generated
	 */
	void setKerning(boolean value);

	/**
	 * Returns the value of the '<em><b>Ligatures</b></em>' attribute.
	 * The default value is <code>"true"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the ligatures of the font are used.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ligatures</em>' attribute.
	 * @see #setLigatures(boolean)
	 * @generated
	 */
	boolean isLigatures();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#isLigatures <em>Ligatures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ligatures</em>' attribute.
	 * @see #isLigatures()
	 * @generated
	 */
	void setLigatures(boolean value);

	/**
	 * Returns the value of the '<em><b>Joined</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether neighbouring letters are moved together until they overlap.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Joined</em>' attribute.
	 * @see #setJoined(boolean)
	 * @generated
	 */
	boolean isJoined();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#isJoined <em>Joined</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Joined</em>' attribute.
	 * @see #isJoined()
	 * @generated
	 */
	void setJoined(boolean value);

	/**
	 * Returns the value of the '<em><b>Touch</b></em>' attribute.
	 * The default value is <code>"0.3"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far joined neighbours overlap, in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Touch</em>' attribute.
	 * @see #setTouch(double)
	 * @generated
	 */
	double getTouch();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getTouch <em>Touch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Touch</em>' attribute.
	 * @see #getTouch()
	 * @generated
	 */
	void setTouch(double value);

	/**
	 * Returns the value of the '<em><b>Features</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * OpenType features by tag, such as smcp,-kern; they prevail over kerning and ligatures. Null for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Features</em>' attribute.
	 * @see #setFeatures(String)
	 * @generated
	 */
	String getFeatures();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getFeatures <em>Features</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Features</em>' attribute.
	 * @see #getFeatures()
	 * @generated
	 */
	void setFeatures(String value);

	/**
	 * Returns the value of the '<em><b>Axes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Values for the axes of a variable font, such as wght=700; null leaves them as the font has them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Axes</em>' attribute.
	 * @see #setAxes(String)
	 * @generated
	 */
	String getAxes();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getAxes <em>Axes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Axes</em>' attribute.
	 * @see #getAxes()
	 * @generated
	 */
	void setAxes(String value);

	/**
	 * Returns the value of the '<em><b>Word Spacing</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Added to every blank, in mm; negative sets tighter.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Word Spacing</em>' attribute.
	 * @see #setWordSpacing(double)
	 * @generated
	 */
	double getWordSpacing();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getWordSpacing <em>Word Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Word Spacing</em>' attribute.
	 * @see #getWordSpacing()
	 * @generated
	 */
	void setWordSpacing(double value);

	/**
	 * Returns the value of the '<em><b>Measure</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Width in mm at which lines are broken between words and to which they are aligned; 0 breaks only where the text says.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Measure</em>' attribute.
	 * @see #setMeasure(double)
	 * @generated
	 */
	double getMeasure();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getMeasure <em>Measure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measure</em>' attribute.
	 * @see #getMeasure()
	 * @generated
	 */
	void setMeasure(double value);

	/**
	 * Returns the value of the '<em><b>Spans</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.TextSpan}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Parts that are set otherwise; no two overlap.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Spans</em>' containment reference list.
	 * @generated
	 */
	List<TextSpan> getSpans();

	/**
	 * Returns the value of the '<em><b>Nudges</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.Nudge}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Letters that stand elsewhere than they were set.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Nudges</em>' containment reference list.
	 * @generated
	 */
	List<Nudge> getNudges();

	/**
	 * Returns the value of the '<em><b>Flow</b></em>' attribute.
	 * The default value is <code>"straight"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.Flow}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What its lines run along.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Flow</em>' attribute.
	 * @see org.frisket.model.Flow
	 * @see #setFlow(Flow)
	 * @generated
	 */
	Flow getFlow();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getFlow <em>Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flow</em>' attribute.
	 * @see org.frisket.model.Flow
	 * @see #getFlow()
	 * @generated
	 */
	void setFlow(Flow value);

	/**
	 * Returns the value of the '<em><b>Arc Radius</b></em>' attribute.
	 * The default value is <code>"50"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Radius in mm of the circle that the text stands on if it flows in an arc.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Arc Radius</em>' attribute.
	 * @see #setArcRadius(double)
	 * @generated
	 */
	double getArcRadius();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getArcRadius <em>Arc Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Arc Radius</em>' attribute.
	 * @see #getArcRadius()
	 * @generated
	 */
	void setArcRadius(double value);

	/**
	 * Returns the value of the '<em><b>Arc Angle</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where on the circle the text starts, has its middle or ends, as its alignment is: degrees from the top, clockwise.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Arc Angle</em>' attribute.
	 * @see #setArcAngle(double)
	 * @generated
	 */
	double getArcAngle();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getArcAngle <em>Arc Angle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Arc Angle</em>' attribute.
	 * @see #getArcAngle()
	 * @generated
	 */
	void setArcAngle(double value);

	/**
	 * Returns the value of the '<em><b>Arc Inside</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the letters stand within the circle instead of outside.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Arc Inside</em>' attribute.
	 * @see #setArcInside(boolean)
	 * @generated
	 */
	boolean isArcInside();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#isArcInside <em>Arc Inside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Arc Inside</em>' attribute.
	 * @see #isArcInside()
	 * @generated
	 */
	void setArcInside(boolean value);

	/**
	 * Returns the value of the '<em><b>Arc Inward</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the heads of the letters point to the middle of the circle, so that it is read counter-clockwise.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Arc Inward</em>' attribute.
	 * @see #setArcInward(boolean)
	 * @generated
	 */
	boolean isArcInward();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#isArcInward <em>Arc Inward</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Arc Inward</em>' attribute.
	 * @see #isArcInward()
	 * @generated
	 */
	void setArcInward(boolean value);

	/**
	 * Returns the value of the '<em><b>Path</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the text stands on if it flows along a path: the first contour of this outline, where that lies.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Path</em>' reference.
	 * @see #setPath(Outline)
	 * @generated
	 */
	Outline getPath();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getPath <em>Path</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Path</em>' reference.
	 * @see #getPath()
	 * @generated
	 */
	void setPath(Outline value);

	/**
	 * Returns the value of the '<em><b>Path Start</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where on the path the text starts, has its middle or ends, as its alignment is: mm from the beginning of the path.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Path Start</em>' attribute.
	 * @see #setPathStart(double)
	 * @generated
	 */
	double getPathStart();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getPathStart <em>Path Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Path Start</em>' attribute.
	 * @see #getPathStart()
	 * @generated
	 */
	void setPathStart(double value);

	/**
	 * Returns the value of the '<em><b>Path Reversed</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the text runs from the end of the path to its beginning.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Path Reversed</em>' attribute.
	 * @see #setPathReversed(boolean)
	 * @generated
	 */
	boolean isPathReversed();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#isPathReversed <em>Path Reversed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Path Reversed</em>' attribute.
	 * @see #isPathReversed()
	 * @generated
	 */
	void setPathReversed(boolean value);

	/**
	 * Returns the value of the '<em><b>Path Hanging</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the letters hang below the path instead of standing on it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Path Hanging</em>' attribute.
	 * @see #setPathHanging(boolean)
	 * @generated
	 */
	boolean isPathHanging();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#isPathHanging <em>Path Hanging</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Path Hanging</em>' attribute.
	 * @see #isPathHanging()
	 * @generated
	 */
	void setPathHanging(boolean value);

	/**
	 * Returns the value of the '<em><b>Box Width</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Width in mm of the box that the text is to fill as far as it can, whatever its height; 0 for no box.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Box Width</em>' attribute.
	 * @see #setBoxWidth(double)
	 * @generated
	 */
	double getBoxWidth();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getBoxWidth <em>Box Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Box Width</em>' attribute.
	 * @see #getBoxWidth()
	 * @generated
	 */
	void setBoxWidth(double value);

	/**
	 * Returns the value of the '<em><b>Box Height</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height in mm of that box; 0 for no box.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Box Height</em>' attribute.
	 * @see #setBoxHeight(double)
	 * @generated
	 */
	double getBoxHeight();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getBoxHeight <em>Box Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Box Height</em>' attribute.
	 * @see #getBoxHeight()
	 * @generated
	 */
	void setBoxHeight(double value);

	/**
	 * Returns the value of the '<em><b>Embolden</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far the edge of every letter is moved outwards, in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Embolden</em>' attribute.
	 * @see #setEmbolden(double)
	 * @generated
	 */
	double getEmbolden();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getEmbolden <em>Embolden</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Embolden</em>' attribute.
	 * @see #getEmbolden()
	 * @generated
	 */
	void setEmbolden(double value);

	/**
	 * Returns the value of the '<em><b>Bars</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.Bar}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bars and frames that hold the letters together.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bars</em>' containment reference list.
	 * @generated
	 */
	List<Bar> getBars();

	/**
	 * Returns the value of the '<em><b>Tie Marks</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether dots and accents are tied to their letters.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tie Marks</em>' attribute.
	 * @see #setTieMarks(boolean)
	 * @generated
	 */
	boolean isTieMarks();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#isTieMarks <em>Tie Marks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tie Marks</em>' attribute.
	 * @see #isTieMarks()
	 * @generated
	 */
	void setTieMarks(boolean value);

	/**
	 * Returns the value of the '<em><b>Tie Width</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Width of those ties in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tie Width</em>' attribute.
	 * @see #setTieWidth(double)
	 * @generated
	 */
	double getTieWidth();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getTieWidth <em>Tie Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tie Width</em>' attribute.
	 * @see #getTieWidth()
	 * @generated
	 */
	void setTieWidth(double value);

	/**
	 * Returns the value of the '<em><b>Stencil</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Width in mm of the bridges that hold the insides of letters; 0 for no bridges.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stencil</em>' attribute.
	 * @see #setStencil(double)
	 * @generated
	 */
	double getStencil();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getStencil <em>Stencil</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stencil</em>' attribute.
	 * @see #getStencil()
	 * @generated
	 */
	void setStencil(double value);

	/**
	 * Returns the value of the '<em><b>Pen Style</b></em>' attribute.
	 * The default value is <code>"outline"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.PenStyle}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What of the letters is worked; all but their outlines is for the pen alone.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pen Style</em>' attribute.
	 * @see org.frisket.model.PenStyle
	 * @see #setPenStyle(PenStyle)
	 * @generated
	 */
	PenStyle getPenStyle();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getPenStyle <em>Pen Style</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pen Style</em>' attribute.
	 * @see org.frisket.model.PenStyle
	 * @see #getPenStyle()
	 * @generated
	 */
	void setPenStyle(PenStyle value);

	/**
	 * Returns the value of the '<em><b>Hatch Spacing</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distance of hatching lines in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Hatch Spacing</em>' attribute.
	 * @see #setHatchSpacing(double)
	 * @generated
	 */
	double getHatchSpacing();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getHatchSpacing <em>Hatch Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hatch Spacing</em>' attribute.
	 * @see #getHatchSpacing()
	 * @generated
	 */
	void setHatchSpacing(double value);

	/**
	 * Returns the value of the '<em><b>Hatch Angle</b></em>' attribute.
	 * The default value is <code>"45"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of hatching lines, in degrees clockwise from the horizontal.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Hatch Angle</em>' attribute.
	 * @see #setHatchAngle(double)
	 * @generated
	 */
	double getHatchAngle();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getHatchAngle <em>Hatch Angle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hatch Angle</em>' attribute.
	 * @see #getHatchAngle()
	 * @generated
	 */
	void setHatchAngle(double value);

	/**
	 * Returns the value of the '<em><b>Hatch Inset</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far hatching lines stay off the edge of a letter, in mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Hatch Inset</em>' attribute.
	 * @see #setHatchInset(double)
	 * @generated
	 */
	double getHatchInset();

	/**
	 * Sets the value of the '{@link org.frisket.model.Wording#getHatchInset <em>Hatch Inset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hatch Inset</em>' attribute.
	 * @see #getHatchInset()
	 * @generated
	 */
	void setHatchInset(double value);

	/**
	 * Returns the value of the '<em><b>Bridges</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.Bridge}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bars between letters, set by hand.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bridges</em>' containment reference list.
	 * @generated
	 */
	List<Bridge> getBridges();

	/**
	 * Returns the value of the '<em><b>Islands</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.IslandBridges}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Insides of letters that are held otherwise than by the rule.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Islands</em>' containment reference list.
	 * @generated
	 */
	List<IslandBridges> getIslands();

} // Wording
