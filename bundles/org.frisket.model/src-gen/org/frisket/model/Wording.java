/**
 */
package org.frisket.model;


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

} // Wording
