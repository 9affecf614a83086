using System.Numerics;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.PathConstruction;
using UglyToad.PdfPig.Graphics.Operations.SpecialGraphicsState;

namespace Pattern.Press.Conformance;

/// <summary>Follows the content of a page and knows where the last path or picture was painted, without its line width.</summary>
internal sealed class PaintedArea
{
    // Curves are followed in steps, which is close enough for a box.
    private const int StepsOfCurve = 16;

    private readonly Stack<(Matrix3x2 Space, Box Clip)> _saved = new();
    private Matrix3x2 _space = Matrix3x2.Identity;
    private Box _clip = new(double.MinValue, double.MinValue, double.MaxValue, double.MaxValue);
    private Box? _path;
    private Vector2 _pen;
    private bool _clips;

    /// <summary>How deep states are saved.</summary>
    public int Depth => _saved.Count;

    /// <summary>Follows an operator; returns what it painted, if that is a path or a picture.</summary>
    public Box? Follow(IGraphicsStateOperation operation)
    {
        switch (operation)
        {
            case ModifyCurrentTransformationMatrix change:
                var m = change.Value;
                _space = new Matrix3x2((float)m[0], (float)m[1], (float)m[2], (float)m[3], (float)m[4], (float)m[5]) * _space;
                return null;
            case BeginNewSubpath move:
                Reach(_pen = new((float)move.X, (float)move.Y));
                return null;
            case AppendStraightLineSegment line:
                Reach(_pen = new((float)line.X, (float)line.Y));
                return null;
            case AppendDualControlPointBezierCurve curve:
                Follow(new((float)curve.X1, (float)curve.Y1), new((float)curve.X2, (float)curve.Y2), new((float)curve.X3, (float)curve.Y3));
                return null;
            case AppendRectangle rectangle:
                Reach(new((float)rectangle.LowerLeftX, (float)rectangle.LowerLeftY));
                Reach(new((float)(rectangle.LowerLeftX + rectangle.Width), (float)(rectangle.LowerLeftY + rectangle.Height)));
                return null;
            default:
                return Follow(operation.Operator);
        }
    }

    private Box? Follow(string name)
    {
        switch (name)
        {
            case "q":
                _saved.Push((_space, _clip));
                return null;
            case "Q":
                if (_saved.TryPop(out var saved))
                    (_space, _clip) = saved;
                return null;
            case "W" or "W*":
                _clips = true;
                return null;
            case "Do":
                foreach (var corner in (Vector2[])[new(0, 0), new(1, 0), new(0, 1), new(1, 1)])
                    Reach(corner);
                return Painted();
            case "S" or "s" or "f" or "F" or "f*" or "B" or "B*" or "b" or "b*":
                return Painted();
            case "n":
                Painted();
                return null;
            default:
                return null;
        }
    }

    private Box? Painted()
    {
        var painted = _path is { } path ? Intersect(path, _clip) : (Box?)null;
        if (_clips && painted is { } clip)
            _clip = clip;
        (_path, _clips) = (null, false);
        return painted;
    }

    private void Follow(Vector2 b, Vector2 c, Vector2 d)
    {
        var a = _pen;
        for (var i = 1; i <= StepsOfCurve; i++)
        {
            var (t, s) = (i / (float)StepsOfCurve, 1 - (i / (float)StepsOfCurve));
            Reach((s * s * s * a) + (3 * s * s * t * b) + (3 * s * t * t * c) + (t * t * t * d));
        }

        _pen = d;
    }

    private void Reach(Vector2 point)
    {
        var at = Vector2.Transform(point, _space);
        _path = _path is { } box
            ? new Box(Math.Min(box.Left, at.X), Math.Min(box.Bottom, at.Y), Math.Max(box.Right, at.X), Math.Max(box.Top, at.Y))
            : new Box(at.X, at.Y, at.X, at.Y);
    }

    private static Box Intersect(Box a, Box b) =>
        new(Math.Max(a.Left, b.Left), Math.Max(a.Bottom, b.Bottom), Math.Min(a.Right, b.Right), Math.Min(a.Top, b.Top));
}
