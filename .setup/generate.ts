// `npm run generate`: everything in the tree that is written by a program, made anew. Tests hold that it is current.
import './write-shelf.ts'
import './write-schemas.ts'
