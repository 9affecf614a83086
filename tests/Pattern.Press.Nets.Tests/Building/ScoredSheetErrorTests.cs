using Pattern.Press.Measure;
using Pattern.Press.Nets.Building;
using static Pattern.Press.Nets.Tests.Sheets;

namespace Pattern.Press.Nets.Tests.Building;

public sealed class ScoredSheetErrorTests
{
    private static readonly ScoredSheet Sound = new()
    {
        Id = "tray",
        Name = "Tray",
        Across = [Mm(20), Mm(50), Mm(20)],
        Down = [Mm(20), Mm(40), Mm(20)],
        Map = ["twt", "wFw", "twt"],
        Cells = new Dictionary<char, Cell>
        {
            ['F'] = Floor,
            ['w'] = Wall(),
            ['t'] = Wall("tab") with { Role = PanelRole.Tab, HangsFrom = HangsFrom.Beside },
        },
        Root = 'F',
    };

    [Fact]
    public void The_sheet_that_the_others_spoil_is_sound() => Assert.Equal(9, Sound.Build().Panels.Count);

    [Fact]
    public void A_band_of_no_width_is_named() =>
        Refused(Sound with { Across = [Mm(20), Length.Zero, Mm(20)] }, "Band 2 across is 0 mm wide");

    [Fact]
    public void A_band_of_less_than_nothing_is_named() =>
        Refused(Sound with { Down = [Mm(20), Mm(40), Mm(-3)] }, "Band 3 down is -3 mm wide");

    [Fact]
    public void A_sheet_without_bands_is_refused() =>
        Refused(Sound with { Across = [], Map = ["", "", ""] }, "There are no bands across");

    [Fact]
    public void A_map_with_too_few_rows_is_refused() =>
        Refused(Sound with { Map = ["twt", "wFw"] }, "The map has 2 rows, but there are 3 bands down");

    [Fact]
    public void A_row_that_is_too_long_is_named() =>
        Refused(Sound with { Map = ["twt", "wFww", "twt"] }, "Row 2 of the map, “wFww”, has 4 letters, but there are 3 bands across");

    [Fact]
    public void A_letter_that_means_nothing_is_named_with_its_row() =>
        Refused(Sound with { Map = ["twt", "wFw", "tqt"] }, "Row 3 of the map uses “q”");

    [Fact]
    public void A_cell_that_is_never_used_is_named() =>
        Refused(With('x', Wall()), "The cells describe “x”, but no row of the map uses it.");

    [Fact]
    public void A_point_cannot_be_a_cell() =>
        Refused(With('.', Wall()), "a point always stands for waste");

    [Fact]
    public void A_root_that_means_nothing_is_refused() =>
        Refused(Sound with { Root = 'R' }, "The root is “R”, but the cells do not say what that is.");

    [Fact]
    public void A_root_that_is_not_in_the_map_is_refused() =>
        Refused(Sound with { Map = ["twt", "www", "twt"] }, "The root “F” is nowhere in the map.");

    [Fact]
    public void A_root_in_two_places_is_refused() =>
        Refused(Sound with { Map = ["Fwt", "wwF", "..."] }, "The root “F” is in 2 separate places of the map; it must be one panel.");

    [Fact]
    public void A_panel_without_a_kind_is_refused() =>
        Refused(With('w', Wall(" ")), "“w” has no kind");

    [Fact]
    public void A_panel_without_a_fold_is_refused() =>
        Refused(With('w', Wall() with { Fold = null }), "“w” has no fold");

    [Theory]
    [InlineData(0)]
    [InlineData(-90)]
    [InlineData(180.5)]
    [InlineData(double.NaN)]
    public void A_fold_turns_by_more_than_nothing_and_at_most_half_a_turn(double angle) =>
        Refused(With('w', Wall() with { Fold = Valley(angle) }), "a fold turns by more than 0° and at most 180°");

    [Theory]
    [InlineData(-1)]
    [InlineData(90)]
    [InlineData(double.NaN)]
    public void A_taper_is_at_least_nothing_and_less_than_a_right_angle(double taper) =>
        Refused(With('t', Sound.Cells['t'] with { Taper = taper }), "a taper is at least 0° and less than 90°");

    [Fact]
    public void A_relief_is_not_less_than_nothing() =>
        Refused(With('t', Sound.Cells['t'] with { Relief = Mm(-1) }), "“t” has a relief of -1 mm");

    [Fact]
    public void The_root_has_neither_taper_nor_relief() =>
        Refused(With('F', Floor with { Taper = 5 }), "“F” is the root, which hangs from no fold");

    [Fact]
    public void A_taper_that_takes_the_whole_tab_is_refused() =>
        Refused(With('t', Sound.Cells['t'] with { Taper = 27 }), "The tab “t” in row 1, band 1 across, would be trimmed away");

    [Fact]
    public void A_relief_that_takes_the_whole_tab_is_refused() =>
        Refused(With('t', Sound.Cells['t'] with { Relief = Mm(10) }), "would be trimmed away");

    [Fact]
    public void A_tab_that_could_hang_from_two_walls_is_refused_with_what_to_say() =>
        Refused(
            With('t', Sound.Cells['t'] with { HangsFrom = HangsFrom.Inward }),
            "The tab “t” in row 1, band 1 across, could hang from 2 panels that are equally near to the root",
            "say whether it hangs from the one beside it");

    [Fact]
    public void A_panel_between_two_holders_on_the_side_it_is_told_to_hang_from_is_refused() =>
        Refused(
            Sound with { Map = ["w.w", "wFw", "wtw"] },
            "could hang from 2 panels",
            "it needs one neighbour only on that side");

    [Fact]
    public void A_panel_with_nothing_beside_it_is_cut_off() =>
        Refused(
            Sound with { Map = [".w.", "wFw", "..t"] },
            "The tab “t” in row 3, band 3 across, is cut off from the rest: it is to hang from a panel to its left or right");

    [Fact]
    public void A_panel_that_touches_the_rest_at_a_corner_only_is_cut_off() =>
        Refused(
            Sound with { Map = ["t..", ".F.", "..."], Cells = new Dictionary<char, Cell> { ['F'] = Floor, ['t'] = Wall() } },
            "is cut off from the rest: no panel beside it leads to the root");

    [Fact]
    public void A_panel_that_is_to_hang_from_above_or_below_but_has_nothing_there_is_cut_off() =>
        Refused(
            Sound with { Map = ["...", "wF.", "..."], Cells = new Dictionary<char, Cell> { ['F'] = Floor, ['w'] = Wall() with { HangsFrom = HangsFrom.AboveOrBelow } } },
            "it is to hang from a panel above or below it");

    [Fact]
    public void A_panel_that_meets_another_round_a_corner_is_refused() =>
        Refused(
            Sound with { Map = ["www", "wF.", "..."], Cells = new Dictionary<char, Cell> { ['F'] = Floor, ['w'] = Wall() } },
            "The wall “w” in row 1, band 1 across, meets the floor “F” along 2 lines");

    [Fact]
    public void A_panel_round_a_hole_is_refused() =>
        Refused(
            Sound with { Map = ["FFF", "F.F", "FFF"], Cells = new Dictionary<char, Cell> { ['F'] = Floor } },
            "The floor “F” in row 1, band 1 across, goes all the way round a hole");

    [Fact]
    public void A_panel_that_touches_itself_at_a_corner_is_refused() =>
        Refused(
            Sound with { Map = [".FF", "F.F", "FFF"], Cells = new Dictionary<char, Cell> { ['F'] = Floor } },
            "goes all the way round a hole");

    [Fact]
    public void A_diagonal_needs_a_panel_beside_each_half() =>
        Refused(Mitred(["dw.", "wFx", "..."], joins: 'x', x: Wall("web")), "The upper right half of “d” in row 1, band 1 across, has no “x” beside it to join");

    [Fact]
    public void A_half_between_two_panels_of_its_letter_is_refused() =>
        Refused(Mitred([".x.", "xdx", ".F."], joins: 'x', x: Wall("web"), direction: DiagonalDirection.Rising), "lies between two panels of “x” and cannot join both");

    [Fact]
    public void A_diagonal_in_the_midst_of_one_panel_is_refused() =>
        Refused(Mitred(["xxx", "xd.", "xxF"], joins: 'x', x: Wall("web"), direction: DiagonalDirection.Falling), "join the same “x”");

    [Fact]
    public void A_diagonal_as_far_from_the_root_at_two_corners_needs_a_direction() =>
        Refused(Mitred(["xd.", "xF.", "..."], joins: 'x', x: Wall("web")), "No one corner of “d” in row 1, band 2 across, is nearest to the root");

    [Fact]
    public void A_diagonal_joins_a_letter_that_is_there() =>
        Refused(Mitred(["dw.", "wF.", "..."], joins: 'q', x: null), "The halves of “d” are to join “q”, but the cells do not say what that is.");

    [Fact]
    public void A_diagonal_cannot_join_its_own_letter() =>
        Refused(Mitred(["dw.", "wF.", "..."], joins: 'd', x: null), "which is split along a diagonal itself");

    [Fact]
    public void A_diagonal_folds_by_an_angle_too()
    {
        var sheet = Mitred(["dw.", "wF.", "..."], joins: 'w', x: null);
        Refused(
            sheet with { Cells = new Dictionary<char, Cell>(sheet.Cells) { ['d'] = new() { Kind = "mitre", Diagonal = new('w', Mountain(200)) } } },
            "“d” folds by 200°");
    }

    [Fact]
    public void What_is_split_along_a_diagonal_has_no_taper_of_its_own()
    {
        var sheet = Mitred(["dw.", "wF.", "..."], joins: 'w', x: null);
        Refused(
            sheet with { Cells = new Dictionary<char, Cell>(sheet.Cells) { ['d'] = new() { Kind = "mitre", Taper = 5, Diagonal = new('w', Mountain(180)) } } },
            "taper, relief and glue belong there");
    }

    [Fact]
    public void The_root_cannot_be_split() =>
        Refused(With('F', Floor with { Diagonal = new('w', Mountain(180)) }), "“F” is the root and cannot be split along a diagonal.");

    [Fact]
    public void All_reasons_are_told_at_once()
    {
        var error = Refused(
            Sound with { Across = [Mm(20), Mm(-1), Mm(20)], Map = ["twt", "wFq"] },
            "Band 2 across", "The map has 2 rows", "Row 2 of the map uses “q”");
        Assert.Equal("tray", error.Piece);
        Assert.Equal(3, error.Reasons.Count);
        Assert.StartsWith("The piece “tray” cannot be made: ", error.Message, StringComparison.Ordinal);
    }

    private static ScoredSheet With(char letter, Cell cell) =>
        Sound with { Cells = new Dictionary<char, Cell>(Sound.Cells) { [letter] = cell } };

    private static ScoredSheet Mitred(string[] map, char joins, Cell? x, DiagonalDirection? direction = null)
    {
        var cells = new Dictionary<char, Cell>
        {
            ['F'] = Floor,
            ['d'] = new() { Kind = "mitre", Diagonal = new(joins, Mountain(180), direction) },
        };
        if (map.Any(row => row.Contains('w')))
            cells['w'] = Wall();
        if (x is not null)
            cells['x'] = x;
        return Sound with { Map = map, Cells = cells };
    }

    private static NetException Refused(ScoredSheet sheet, params string[] reasons)
    {
        var error = Assert.Throws<NetException>(sheet.Build);
        foreach (var reason in reasons)
            Assert.Contains(error.Reasons, given => given.Contains(reason, StringComparison.Ordinal));
        Assert.All(error.Reasons, reason => Assert.EndsWith(".", reason, StringComparison.Ordinal));
        return error;
    }
}
