using Pattern.Press.Plans.Materials;

namespace Pattern.Press.Booklets.Composing;

/// <summary>What the primary and the other fit take of each stock for a number of kits, planned when it is first asked for.</summary>
internal sealed class KitMaterials
{
    private readonly Lazy<MaterialsList> _primary;
    private readonly Lazy<MaterialsList> _secondary;

    /// <summary>Prepares to plan.</summary>
    /// <param name="context">The booklet.</param>
    /// <param name="kits">How many kits; 1 or more.</param>
    public KitMaterials(BookletContext context, int kits)
    {
        var stocks = context.Source.Stocks.Values.ToList();
        _primary = new(() => MaterialsList.Make(context.Primary.Kit, kits, stocks));
        _secondary = new(() => MaterialsList.Make(context.Secondary.Kit, kits, stocks));
    }

    /// <summary>What the primary fit takes.</summary>
    public MaterialsList Primary => _primary.Value;

    /// <summary>What the other fit takes.</summary>
    public MaterialsList Secondary => _secondary.Value;
}
