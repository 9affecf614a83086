using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>
/// Puts surfaces in the order in which they have to be painted so that nearer ones cover farther ones, exactly: space is
/// divided by the planes of the surfaces themselves (binary space partition; H. Fuchs, Z. M. Kedem and B. F. Naylor, 1980),
/// and surfaces that reach through such a plane are split along it.
/// </summary>
public static class PaintOrder
{
    /// <summary>Corners this near to a plane lie on it, in millimetres.</summary>
    private const double Thin = 1e-4;

    /// <summary>How many planes are tried for each division.</summary>
    private const int Tried = 12;

    /// <summary>The parts of the surfaces that face the viewer, or have a back, the farthest first.</summary>
    public static IReadOnlyList<Face> Of(IEnumerable<Face> faces, Axonometry view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var painted = new List<Face>();
        Paint([.. faces.Where(face => IsSeen(face, view))], view, painted);
        return painted;
    }

    /// <summary>Whether the viewer sees a side of a face that somebody can see, and not just its edge.</summary>
    internal static bool IsSeen(Face face, Axonometry view)
    {
        var turned = face.Normal.Dot(view.Viewer);
        return turned > 1e-6 || (turned < -1e-6 && face.Back is not null);
    }

    private static void Paint(List<Face> faces, Axonometry view, List<Face> painted)
    {
        // The sides of one convex body that face the viewer never cover each other.
        if (faces.Count == 0 || IsOneBody(faces))
        {
            painted.AddRange(faces);
            return;
        }

        var splitter = Splitter(faces);
        var (normal, level) = (splitter.Normal, splitter.Normal.Dot(splitter.Corners[0]));
        var (front, back, level0) = (new List<Face>(), new List<Face>(), new List<Face>());
        foreach (var face in faces)
        {
            switch (Lie(face, normal, level))
            {
                case Place.On:
                    level0.Add(face);
                    break;
                case Place.Front:
                    front.Add(face);
                    break;
                case Place.Back:
                    back.Add(face);
                    break;
                default:
                    front.Add(face with { Corners = Part(face.Corners, normal, level) });
                    back.Add(face with { Corners = Part(face.Corners, -normal, -level) });
                    break;
            }
        }

        var near = normal.Dot(view.Viewer) > 0;
        Paint(near ? back : front, view, painted);
        painted.AddRange(level0);
        Paint(near ? front : back, view, painted);
    }

    private static bool IsOneBody(List<Face> faces) => faces[0].Back is null && faces.TrueForAll(face => face.Owner == faces[0].Owner);

    // The plane that splits fewest surfaces and, of those, leaves the two sides most alike.
    private static Face Splitter(List<Face> faces)
    {
        // Panels before bodies: the many sides of a round body would cut everything to slivers.
        var candidates = faces.Where(face => face.Back is not null).ToList();
        if (candidates.Count == 0)
            candidates = faces;
        var (best, least) = (candidates[0], int.MaxValue);
        var step = Math.Max(1, candidates.Count / Tried);
        for (var i = 0; i < candidates.Count; i += step)
        {
            var (normal, level) = (candidates[i].Normal, candidates[i].Normal.Dot(candidates[i].Corners[0]));
            var (splits, balance) = (0, 0);
            foreach (var face in faces)
            {
                switch (Lie(face, normal, level))
                {
                    case Place.Front:
                        balance++;
                        break;
                    case Place.Back:
                        balance--;
                        break;
                    case Place.Both:
                        splits++;
                        break;
                }
            }

            var cost = (8 * splits) + Math.Abs(balance);
            if (cost < least)
                (best, least) = (candidates[i], cost);
        }

        return best;
    }

    private static Place Lie(Face face, Vector3d normal, double level)
    {
        var place = Place.On;
        var corners = face.Corners;
        for (var i = 0; i < corners.Count; i++)
        {
            var height = normal.Dot(corners[i]) - level;
            if (height > Thin)
                place |= Place.Front;
            else if (height < -Thin)
                place |= Place.Back;
        }

        return place;
    }

    private static List<Vector3d> Part(IReadOnlyList<Vector3d> corners, Vector3d normal, double level)
    {
        var part = new List<Vector3d>(corners.Count + 1);
        for (var i = 0; i < corners.Count; i++)
        {
            var (here, next) = (corners[i], corners[(i + 1) % corners.Count]);
            var (a, b) = (normal.Dot(here) - level, normal.Dot(next) - level);
            if (a >= -Thin)
                part.Add(here);
            if ((a > Thin && b < -Thin) || (a < -Thin && b > Thin))
                part.Add(here.Towards(next, a / (a - b)));
        }

        return part;
    }

    [Flags]
    private enum Place
    {
        On = 0,
        Front = 1,
        Back = 2,
        Both = 3,
    }
}
