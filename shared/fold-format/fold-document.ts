import { z } from 'zod';

/*
 * FOLD, a file format for origami, version 1.2. Members keep the format's own names, in which `A_B` is
 * property B of each A. Specification: https://github.com/edemaine/fold/blob/main/doc/spec.md
 */

const vertex = z.int().min(0);
const face = z.int().min(0);

const coords = z
  .array(z.array(z.number()).min(2).max(3))
  .meta({ description: 'Of each vertex: x to the right, y up, and in 3D frames z toward the viewer.' });

const assignments = z
  .array(z.enum(['B', 'M', 'V', 'F']))
  .meta({ description: 'Of each edge: border, mountain, valley, or flat where a crease is not folded yet.' });

const foldAngles = z
  .array(z.number().min(-180).max(180))
  .meta({ description: 'Degrees: positive for a valley, negative for a mountain, 0 for border and flat.' });

const faceOrders = z.array(z.tuple([face, face, z.union([z.literal(1), z.literal(-1)])])).meta({
  description:
    'Triples [f, g, s] of faces that overlap: with s = 1, f lies on the side to which g’s normal points in the folded form; with s = -1, on the other side.',
});

const attributes = z.array(
  z.enum([
    '2D',
    '3D',
    'manifold',
    'orientable',
    'selfTouching',
    'nonSelfTouching',
    'nonSelfIntersecting',
    'noCuts',
    'noJoins',
    'convexFaces',
  ]),
);

const foldFrame = z
  .strictObject({
    frame_title: z.string(),
    frame_classes: z.tuple([z.literal('foldedForm')]),
    frame_attributes: attributes,
    frame_parent: z.literal(0).meta({ description: 'The crease pattern.' }),
    frame_inherit: z.literal(true),
    vertices_coords: coords,
    edges_assignment: assignments,
    edges_foldAngle: foldAngles,
    faceOrders,
  })
  .meta({
    id: 'FoldFrame',
    description: 'A folded form; what it does not say, it takes over from the crease pattern.',
  });

/** A crease pattern with its folded forms as FOLD 1.2: the reply of `POST /v1/folders/fold`. */
export const foldDocument = z
  .strictObject({
    file_spec: z.literal(1.2),
    file_creator: z.string(),
    file_title: z.string(),
    file_description: z.string(),
    file_classes: z.tuple([z.literal('singleModel'), z.literal('diagrams')]),
    frame_title: z.string(),
    frame_classes: z.tuple([z.literal('creasePattern')]),
    frame_attributes: attributes,
    frame_unit: z.literal('mm'),
    vertices_coords: coords,
    edges_vertices: z.array(z.tuple([vertex, vertex])),
    edges_faces: z.array(z.tuple([face.nullable(), face.nullable()])).meta({
      description: 'Of each edge: the face to its left and to its right, null beyond the border.',
    }),
    edges_assignment: assignments,
    edges_foldAngle: foldAngles,
    'edges_hemfold:step': z
      .array(z.string().nullable())
      .meta({ description: 'Of each edge: the name of the step that makes it, null for the border.' }),
    faces_vertices: z
      .array(z.array(vertex).min(3))
      .meta({ description: 'Of each face: its vertices, counter-clockwise in the crease pattern.' }),
    faces_edges: z
      .array(z.array(z.int().min(0)).min(3))
      .meta({ description: 'Of each face: its edges, each from the vertex at the same place to the next.' }),
    'faces_hemfold:panel': z
      .array(z.string())
      .meta({ description: 'Of each face: the name of the panel that it is part of.' }),
    file_frames: z.array(foldFrame).meta({
      description:
        'First the flat form before the spine is bent, then the closed form in 3D, then the form after each step that moves paper; gluing and filling have no frame.',
    }),
  })
  .meta({
    id: 'FoldDocument',
    title: 'FOLD 1.2',
    description:
      'The crease pattern with the inside face up and its folded forms, in millimetres from the blank’s bottom left corner, x to the right and y up.',
  });

export type FoldDocument = z.output<typeof foldDocument>;
export type FoldFrame = z.output<typeof foldFrame>;
