/**
 */
package org.frisket.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Picture Edge</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How the contour of a picture is found.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.PictureEdge#getBackdrop <em>Backdrop</em>}</li>
 *   <li>{@link org.frisket.model.PictureEdge#getColour <em>Colour</em>}</li>
 *   <li>{@link org.frisket.model.PictureEdge#getDifference <em>Difference</em>}</li>
 *   <li>{@link org.frisket.model.PictureEdge#getShadow <em>Shadow</em>}</li>
 *   <li>{@link org.frisket.model.PictureEdge#getSpecks <em>Specks</em>}</li>
 *   <li>{@link org.frisket.model.PictureEdge#getHoles <em>Holes</em>}</li>
 *   <li>{@link org.frisket.model.PictureEdge#getSmoothing <em>Smoothing</em>}</li>
 *   <li>{@link org.frisket.model.PictureEdge#getBorder <em>Border</em>}</li>
 *   <li>{@link org.frisket.model.PictureEdge#isWhole <em>Whole</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface PictureEdge extends EObject {
	/**
	 * Returns the value of the '<em><b>Backdrop</b></em>' attribute.
	 * The default value is <code>"auto"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.BackdropRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What of the picture is no art.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Backdrop</em>' attribute.
	 * @see org.frisket.model.BackdropRule
	 * @see #setBackdrop(BackdropRule)
	 * @generated
	 */
	BackdropRule getBackdrop();

	/**
	 * Sets the value of the '{@link org.frisket.model.PictureEdge#getBackdrop <em>Backdrop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Backdrop</em>' attribute.
	 * @see org.frisket.model.BackdropRule
	 * @see #getBackdrop()
	 * @generated
	 */
	void setBackdrop(BackdropRule value);

	/**
	 * Returns the value of the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The colour of the backdrop as #rrggbb, if it is told by it; null otherwise.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Colour</em>' attribute.
	 * @see #setColour(String)
	 * @generated
	 */
	String getColour();

	/**
	 * Sets the value of the '{@link org.frisket.model.PictureEdge#getColour <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Colour</em>' attribute.
	 * @see #getColour()
	 * @generated
	 */
	void setColour(String value);

	/**
	 * Returns the value of the '<em><b>Difference</b></em>' attribute.
	 * The default value is <code>"10"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much, in CIE 1976 ΔE*ab, a colour may differ from that of the backdrop and still be it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Difference</em>' attribute.
	 * @see #setDifference(double)
	 * @generated
	 */
	double getDifference();

	/**
	 * Sets the value of the '{@link org.frisket.model.PictureEdge#getDifference <em>Difference</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Difference</em>' attribute.
	 * @see #getDifference()
	 * @generated
	 */
	void setDifference(double value);

	/**
	 * Returns the value of the '<em><b>Shadow</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much lightness, in L* of 100, a shadow on the backdrop may take; 0 for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Shadow</em>' attribute.
	 * @see #setShadow(double)
	 * @generated
	 */
	double getShadow();

	/**
	 * Sets the value of the '{@link org.frisket.model.PictureEdge#getShadow <em>Shadow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shadow</em>' attribute.
	 * @see #getShadow()
	 * @generated
	 */
	void setShadow(double value);

	/**
	 * Returns the value of the '<em><b>Specks</b></em>' attribute.
	 * The default value is <code>"0.5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm: what is smaller is left out.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Specks</em>' attribute.
	 * @see #setSpecks(double)
	 * @generated
	 */
	double getSpecks();

	/**
	 * Sets the value of the '{@link org.frisket.model.PictureEdge#getSpecks <em>Specks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Specks</em>' attribute.
	 * @see #getSpecks()
	 * @generated
	 */
	void setSpecks(double value);

	/**
	 * Returns the value of the '<em><b>Holes</b></em>' attribute.
	 * The default value is <code>"asTold"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.EdgeHoles}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What becomes of what the art encloses.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Holes</em>' attribute.
	 * @see org.frisket.model.EdgeHoles
	 * @see #setHoles(EdgeHoles)
	 * @generated
	 */
	EdgeHoles getHoles();

	/**
	 * Sets the value of the '{@link org.frisket.model.PictureEdge#getHoles <em>Holes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Holes</em>' attribute.
	 * @see org.frisket.model.EdgeHoles
	 * @see #getHoles()
	 * @generated
	 */
	void setHoles(EdgeHoles value);

	/**
	 * Returns the value of the '<em><b>Smoothing</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Radius in mm to which it is smoothed; 0 for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Smoothing</em>' attribute.
	 * @see #setSmoothing(double)
	 * @generated
	 */
	double getSmoothing();

	/**
	 * Sets the value of the '{@link org.frisket.model.PictureEdge#getSmoothing <em>Smoothing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Smoothing</em>' attribute.
	 * @see #getSmoothing()
	 * @generated
	 */
	void setSmoothing(double value);

	/**
	 * Returns the value of the '<em><b>Border</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far in mm it goes outwards, for a bare border round the art, or inwards if negative.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Border</em>' attribute.
	 * @see #setBorder(double)
	 * @generated
	 */
	double getBorder();

	/**
	 * Sets the value of the '{@link org.frisket.model.PictureEdge#getBorder <em>Border</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Border</em>' attribute.
	 * @see #getBorder()
	 * @generated
	 */
	void setBorder(double value);

	/**
	 * Returns the value of the '<em><b>Whole</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether all parts are joined to one.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Whole</em>' attribute.
	 * @see #setWhole(boolean)
	 * @generated
	 */
	boolean isWhole();

	/**
	 * Sets the value of the '{@link org.frisket.model.PictureEdge#isWhole <em>Whole</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Whole</em>' attribute.
	 * @see #isWhole()
	 * @generated
	 */
	void setWhole(boolean value);

} // PictureEdge
