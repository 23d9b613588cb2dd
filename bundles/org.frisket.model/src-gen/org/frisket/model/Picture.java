/**
 */
package org.frisket.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Picture</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A picture: pixels, or art that is drawn. It is printed, and can be worked along the edge of what it shows; a mat may stand behind it. Its upper left corner is the origin of its own frame.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Picture#getImage <em>Image</em>}</li>
 *   <li>{@link org.frisket.model.Picture#getMediaType <em>Media Type</em>}</li>
 *   <li>{@link org.frisket.model.Picture#getWidth <em>Width</em>}</li>
 *   <li>{@link org.frisket.model.Picture#getHeight <em>Height</em>}</li>
 *   <li>{@link org.frisket.model.Picture#getLink <em>Link</em>}</li>
 *   <li>{@link org.frisket.model.Picture#getEdge <em>Edge</em>}</li>
 *   <li>{@link org.frisket.model.Picture#getBleed <em>Bleed</em>}</li>
 *   <li>{@link org.frisket.model.Picture#getBleedKind <em>Bleed Kind</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Picture extends Element {
	/**
	 * Returns the value of the '<em><b>Image</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The file of the picture as it came, kept in the job so that both travel together; null if it has none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Image</em>' attribute.
	 * @see #setImage(ImageBytes)
	 * @generated
	 */
	ImageBytes getImage();

	/**
	 * Sets the value of the '{@link org.frisket.model.Picture#getImage <em>Image</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Image</em>' attribute.
	 * @see #getImage()
	 * @generated
	 */
	void setImage(ImageBytes value);

	/**
	 * Returns the value of the '<em><b>Media Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What kind of file that is, such as image/png; null if nobody has said.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Media Type</em>' attribute.
	 * @see #setMediaType(String)
	 * @generated
	 */
	String getMediaType();

	/**
	 * Sets the value of the '{@link org.frisket.model.Picture#getMediaType <em>Media Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Media Type</em>' attribute.
	 * @see #getMediaType()
	 * @generated
	 */
	void setMediaType(String value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(double)
	 * @generated
	 */
	double getWidth();

	/**
	 * Sets the value of the '{@link org.frisket.model.Picture#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(double value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(double)
	 * @generated
	 */
	double getHeight();

	/**
	 * Sets the value of the '{@link org.frisket.model.Picture#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(double value);

	/**
	 * Returns the value of the '<em><b>Link</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where its file is, if it is not kept in the job: relative to the file of the job, or absolute; null if it is kept.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Link</em>' attribute.
	 * @see #setLink(String)
	 * @generated
	 */
	String getLink();

	/**
	 * Sets the value of the '{@link org.frisket.model.Picture#getLink <em>Link</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Link</em>' attribute.
	 * @see #getLink()
	 * @generated
	 */
	void setLink(String value);

	/**
	 * Returns the value of the '<em><b>Edge</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How its contour is found, along which it is worked and which mats follow; null for the rectangle that it fills.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Edge</em>' containment reference.
	 * @see #setEdge(PictureEdge)
	 * @generated
	 */
	PictureEdge getEdge();

	/**
	 * Sets the value of the '{@link org.frisket.model.Picture#getEdge <em>Edge</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Edge</em>' containment reference.
	 * @see #getEdge()
	 * @generated
	 */
	void setEdge(PictureEdge value);

	/**
	 * Returns the value of the '<em><b>Bleed</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm, how far its print goes on beyond its contour.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bleed</em>' attribute.
	 * @see #setBleed(double)
	 * @generated
	 */
	double getBleed();

	/**
	 * Sets the value of the '{@link org.frisket.model.Picture#getBleed <em>Bleed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bleed</em>' attribute.
	 * @see #getBleed()
	 * @generated
	 */
	void setBleed(double value);

	/**
	 * Returns the value of the '<em><b>Bleed Kind</b></em>' attribute.
	 * The default value is <code>"extend"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.BleedKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is printed there.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bleed Kind</em>' attribute.
	 * @see org.frisket.model.BleedKind
	 * @see #setBleedKind(BleedKind)
	 * @generated
	 */
	BleedKind getBleedKind();

	/**
	 * Sets the value of the '{@link org.frisket.model.Picture#getBleedKind <em>Bleed Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bleed Kind</em>' attribute.
	 * @see org.frisket.model.BleedKind
	 * @see #getBleedKind()
	 * @generated
	 */
	void setBleedKind(BleedKind value);

} // Picture
