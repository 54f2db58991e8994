import {
  BackSide,
  BufferAttribute,
  BufferGeometry,
  CanvasTexture,
  DirectionalLight,
  FrontSide,
  Group,
  HemisphereLight,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshLambertMaterial,
  PerspectiveCamera,
  Scene,
  type Side,
  SRGBColorSpace,
  WebGLRenderer,
} from 'three';
import type { Point3 } from '../../../shared/folding/space.ts';
import type { Solid } from '../ask/solid.ts';
import type { Face, Photo } from '../state/photos.ts';
import { folder } from './fold.ts';
import { paintFace, type SheetLook } from './paper.ts';

/** The folder in space, on one canvas. */
export interface Stage {
  /** Shows another folder, folded as far as the one before. */
  readonly show: (solid: Solid) => void;
  /** Paints the two faces of the paper. */
  readonly paper: (
    look: SheetLook,
    photos: Partial<Record<Face, Photo | undefined>>,
    swapped: boolean,
  ) => Promise<void>;
  /** @param at how many steps are done; between two, how far the next one is */
  readonly foldTo: (at: number) => void;
  /** Turns the folder by degrees. */
  readonly turn: (across: number, down: number) => void;
  readonly close: () => void;
}

const fieldOfView = 32;
/** How far lines lie above the paper, in calipers. */
const inkHeight = 0.25;
const inRadians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Corners of every face as triangles: faces are convex. */
const trianglesOf = (faces: readonly (readonly Point3[])[]): readonly Point3[] =>
  faces.flatMap((corners) =>
    corners.slice(2).flatMap((corner, index) => {
      const [first, before] = [corners[0], corners[index + 1]];
      // clockwise as seen with the inside up, and what is seen from there is to be the front
      return first && before ? [first, corner, before] : [];
    }),
  );

const edgesOf = (faces: readonly (readonly Point3[])[]): readonly Point3[] =>
  faces.flatMap((corners) =>
    corners.flatMap((corner, index) => [corner, corners[(index + 1) % corners.length] ?? corner]),
  );

/** Millimetres with y up, as three.js has it. */
const numbersOf = (points: readonly Point3[]): Float32Array =>
  Float32Array.from(points.flatMap(({ x, y, z }) => [x, -y, z]));

function materialOf(side: Side): MeshLambertMaterial {
  return new MeshLambertMaterial({
    side,
    flatShading: true,
    alphaTest: 0.5,
  });
}

/**
 * Opens a stage on a canvas.
 * @throws Error where the browser has no WebGL
 */
export function openStage(canvas: HTMLCanvasElement): Stage {
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  const scene = new Scene();
  const camera = new PerspectiveCamera(fieldOfView, 1, 1, 10_000);
  const sun = new DirectionalLight(0xffffff, 1.6);
  sun.position.set(-0.4, 0.8, 1);
  const faces = new BufferGeometry();
  const edges = new BufferGeometry();
  const materials = { inside: materialOf(FrontSide), outside: materialOf(BackSide) };
  const ink = new LineBasicMaterial({ color: 0x1c1915, transparent: true, opacity: 0.6 });
  const model = new Group();
  model.add(
    new Mesh(faces, materials.inside),
    new Mesh(faces, materials.outside),
    new LineSegments(edges, ink),
  );
  const pivot = new Group();
  pivot.add(model);
  scene.add(pivot, sun, new HemisphereLight(0xffffff, 0xd9cdb9, 2.2));

  let solid: Solid | undefined;
  let fold: ReturnType<typeof folder> | undefined;
  let moment = 0;
  let turned = { across: -24, down: -38 };

  const draw = () => {
    pivot.rotation.set(inRadians(turned.down), inRadians(turned.across), 0);
    renderer.render(scene, camera);
  };

  const update = () => {
    if (!solid || !fold) return;
    const at = Math.min(moment, solid.steps);
    const corners = fold(at);
    faces.setAttribute('position', new BufferAttribute(numbersOf(trianglesOf(corners)), 3));
    // on both sides of the paper, and closer to it than the next layer
    const above = solid.caliper * inkHeight;
    const lines = [above, -above].flatMap((height) => edgesOf(fold?.(at, height) ?? []));
    edges.setAttribute('position', new BufferAttribute(numbersOf(lines), 3));
    faces.computeVertexNormals();
    faces.computeBoundingSphere();
    edges.computeBoundingSphere();
    const { center, radius } = faces.boundingSphere ?? { center: undefined, radius: 1 };
    if (center) model.position.copy(center).negate();
    // however it is turned, nothing of it leaves the canvas
    const distance = radius / Math.sin(inRadians(fieldOfView / 2));
    camera.position.set(0, 0, distance);
    camera.near = distance - radius * 1.1;
    camera.far = distance + radius * 1.1;
    camera.updateProjectionMatrix();
    draw();
  };

  const fit = () => {
    const { clientWidth, clientHeight } = canvas;
    if (clientWidth === 0 || clientHeight === 0) return;
    renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
    renderer.setSize(clientWidth, clientHeight, false);
    camera.aspect = clientWidth / clientHeight;
    // a narrow canvas shows as much as a square one
    camera.fov = camera.aspect >= 1 ? fieldOfView : fieldOfView / camera.aspect;
    camera.updateProjectionMatrix();
    draw();
  };
  const observer = new ResizeObserver(fit);
  observer.observe(canvas);

  return {
    show: (next) => {
      solid = next;
      fold = folder(next);
      const places = trianglesOf(
        next.faces.map((corners) =>
          corners.map((corner) => {
            const [x = 0, y = 0] = next.vertices[corner] ?? [];
            return { x: x / next.width, y: y / next.height, z: 0 };
          }),
        ),
      );
      faces.setAttribute(
        'uv',
        new BufferAttribute(Float32Array.from(places.flatMap(({ x, y }) => [x, 1 - y])), 2),
      );
      update();
    },
    paper: async (look, photos, swapped) => {
      const [inside, outside] = await Promise.all([
        paintFace('inside', look, photos.inside, swapped ? 'dots' : 'stripes'),
        paintFace('outside', look, photos.outside, swapped ? 'stripes' : 'dots'),
      ]);
      for (const [face, painted] of [
        ['inside', inside],
        ['outside', outside],
      ] as const) {
        const texture = new CanvasTexture(painted);
        texture.colorSpace = SRGBColorSpace;
        texture.anisotropy = renderer.capabilities.getMaxAnisotropy();
        materials[face].map?.dispose();
        materials[face].map = texture;
        materials[face].needsUpdate = true;
      }
      draw();
    },
    foldTo: (at) => {
      moment = at;
      update();
    },
    turn: (across, down) => {
      turned = {
        across: turned.across + across,
        down: Math.max(-89, Math.min(89, turned.down + down)),
      };
      draw();
    },
    close: () => {
      observer.disconnect();
      for (const material of Object.values(materials)) {
        material.map?.dispose();
        material.dispose();
      }
      faces.dispose();
      edges.dispose();
      ink.dispose();
      renderer.dispose();
    },
  };
}
