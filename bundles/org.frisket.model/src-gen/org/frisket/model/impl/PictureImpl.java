/**
 */
package org.frisket.model.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.frisket.model.BleedKind;
import org.frisket.model.ImageBytes;
import org.frisket.model.Picture;
import org.frisket.model.PictureEdge;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Picture</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.PictureImpl#getImage <em>Image</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureImpl#getMediaType <em>Media Type</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureImpl#getLink <em>Link</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureImpl#getEdge <em>Edge</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureImpl#getBleed <em>Bleed</em>}</li>
 *   <li>{@link org.frisket.model.impl.PictureImpl#getBleedKind <em>Bleed Kind</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PictureImpl extends ElementImpl implements Picture {
	/**
	 * The default value of the '{@link #getImage() <em>Image</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getImage()
	 * @generated
	 * @ordered
	 */
	protected static final ImageBytes IMAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getImage() <em>Image</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getImage()
	 * @generated
	 * @ordered
	 */
	protected ImageBytes image = IMAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMediaType() <em>Media Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMediaType()
	 * @generated
	 * @ordered
	 */
	protected static final String MEDIA_TYPE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMediaType() <em>Media Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMediaType()
	 * @generated
	 * @ordered
	 */
	protected String mediaType = MEDIA_TYPE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected static final double WIDTH_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected double width = WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected static final double HEIGHT_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected double height = HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getLink() <em>Link</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLink()
	 * @generated
	 * @ordered
	 */
	protected static final String LINK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLink() <em>Link</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLink()
	 * @generated
	 * @ordered
	 */
	protected String link = LINK_EDEFAULT;

	/**
	 * The cached value of the '{@link #getEdge() <em>Edge</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEdge()
	 * @generated
	 * @ordered
	 */
	protected PictureEdge edge;

	/**
	 * The default value of the '{@link #getBleed() <em>Bleed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBleed()
	 * @generated
	 * @ordered
	 */
	protected static final double BLEED_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getBleed() <em>Bleed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBleed()
	 * @generated
	 * @ordered
	 */
	protected double bleed = BLEED_EDEFAULT;

	/**
	 * The default value of the '{@link #getBleedKind() <em>Bleed Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBleedKind()
	 * @generated
	 * @ordered
	 */
	protected static final BleedKind BLEED_KIND_EDEFAULT = BleedKind.EXTEND;

	/**
	 * The cached value of the '{@link #getBleedKind() <em>Bleed Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBleedKind()
	 * @generated
	 * @ordered
	 */
	protected BleedKind bleedKind = BLEED_KIND_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PictureImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.PICTURE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ImageBytes getImage() {
		return image;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setImage(ImageBytes newImage) {
		ImageBytes oldImage = image;
		image = newImage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE__IMAGE, oldImage, image));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMediaType() {
		return mediaType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMediaType(String newMediaType) {
		String oldMediaType = mediaType;
		mediaType = newMediaType;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE__MEDIA_TYPE, oldMediaType, mediaType));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getWidth() {
		return width;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidth(double newWidth) {
		double oldWidth = width;
		width = newWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE__WIDTH, oldWidth, width));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getHeight() {
		return height;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeight(double newHeight) {
		double oldHeight = height;
		height = newHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE__HEIGHT, oldHeight, height));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLink() {
		return link;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLink(String newLink) {
		String oldLink = link;
		link = newLink;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE__LINK, oldLink, link));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PictureEdge getEdge() {
		return edge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetEdge(PictureEdge newEdge, NotificationChain msgs) {
		PictureEdge oldEdge = edge;
		edge = newEdge;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE__EDGE, oldEdge, newEdge);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEdge(PictureEdge newEdge) {
		if (newEdge != edge) {
			NotificationChain msgs = null;
			if (edge != null)
				msgs = ((InternalEObject)edge).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - FrisketPackageImpl.PICTURE__EDGE, null, msgs);
			if (newEdge != null)
				msgs = ((InternalEObject)newEdge).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - FrisketPackageImpl.PICTURE__EDGE, null, msgs);
			msgs = basicSetEdge(newEdge, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE__EDGE, newEdge, newEdge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getBleed() {
		return bleed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBleed(double newBleed) {
		double oldBleed = bleed;
		bleed = newBleed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE__BLEED, oldBleed, bleed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BleedKind getBleedKind() {
		return bleedKind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBleedKind(BleedKind newBleedKind) {
		BleedKind oldBleedKind = bleedKind;
		bleedKind = newBleedKind == null ? BLEED_KIND_EDEFAULT : newBleedKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.PICTURE__BLEED_KIND, oldBleedKind, bleedKind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case FrisketPackageImpl.PICTURE__EDGE:
				return basicSetEdge(null, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.PICTURE__IMAGE:
				return getImage();
			case FrisketPackageImpl.PICTURE__MEDIA_TYPE:
				return getMediaType();
			case FrisketPackageImpl.PICTURE__WIDTH:
				return getWidth();
			case FrisketPackageImpl.PICTURE__HEIGHT:
				return getHeight();
			case FrisketPackageImpl.PICTURE__LINK:
				return getLink();
			case FrisketPackageImpl.PICTURE__EDGE:
				return getEdge();
			case FrisketPackageImpl.PICTURE__BLEED:
				return getBleed();
			case FrisketPackageImpl.PICTURE__BLEED_KIND:
				return getBleedKind();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case FrisketPackageImpl.PICTURE__IMAGE:
				setImage((ImageBytes)newValue);
				return;
			case FrisketPackageImpl.PICTURE__MEDIA_TYPE:
				setMediaType((String)newValue);
				return;
			case FrisketPackageImpl.PICTURE__WIDTH:
				setWidth((Double)newValue);
				return;
			case FrisketPackageImpl.PICTURE__HEIGHT:
				setHeight((Double)newValue);
				return;
			case FrisketPackageImpl.PICTURE__LINK:
				setLink((String)newValue);
				return;
			case FrisketPackageImpl.PICTURE__EDGE:
				setEdge((PictureEdge)newValue);
				return;
			case FrisketPackageImpl.PICTURE__BLEED:
				setBleed((Double)newValue);
				return;
			case FrisketPackageImpl.PICTURE__BLEED_KIND:
				setBleedKind((BleedKind)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case FrisketPackageImpl.PICTURE__IMAGE:
				setImage(IMAGE_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE__MEDIA_TYPE:
				setMediaType(MEDIA_TYPE_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE__WIDTH:
				setWidth(WIDTH_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE__HEIGHT:
				setHeight(HEIGHT_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE__LINK:
				setLink(LINK_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE__EDGE:
				setEdge((PictureEdge)null);
				return;
			case FrisketPackageImpl.PICTURE__BLEED:
				setBleed(BLEED_EDEFAULT);
				return;
			case FrisketPackageImpl.PICTURE__BLEED_KIND:
				setBleedKind(BLEED_KIND_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case FrisketPackageImpl.PICTURE__IMAGE:
				return IMAGE_EDEFAULT == null ? image != null : !IMAGE_EDEFAULT.equals(image);
			case FrisketPackageImpl.PICTURE__MEDIA_TYPE:
				return MEDIA_TYPE_EDEFAULT == null ? mediaType != null : !MEDIA_TYPE_EDEFAULT.equals(mediaType);
			case FrisketPackageImpl.PICTURE__WIDTH:
				return width != WIDTH_EDEFAULT;
			case FrisketPackageImpl.PICTURE__HEIGHT:
				return height != HEIGHT_EDEFAULT;
			case FrisketPackageImpl.PICTURE__LINK:
				return LINK_EDEFAULT == null ? link != null : !LINK_EDEFAULT.equals(link);
			case FrisketPackageImpl.PICTURE__EDGE:
				return edge != null;
			case FrisketPackageImpl.PICTURE__BLEED:
				return bleed != BLEED_EDEFAULT;
			case FrisketPackageImpl.PICTURE__BLEED_KIND:
				return bleedKind != BLEED_KIND_EDEFAULT;
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (image: ");
		result.append(image);
		result.append(", mediaType: ");
		result.append(mediaType);
		result.append(", width: ");
		result.append(width);
		result.append(", height: ");
		result.append(height);
		result.append(", link: ");
		result.append(link);
		result.append(", bleed: ");
		result.append(bleed);
		result.append(", bleedKind: ");
		result.append(bleedKind);
		result.append(')');
		return result.toString();
	}

} //PictureImpl
